package patinary.pieces;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.shop.CurrentShop;

/** Reads cost cards: money from the postings and the views over them, and from nowhere else. */
@Repository
class CostCards {

    private static final String FIGURES = """
            select f.state, f.since,
                   (select s.price_minor from piece_state s where s.piece_id = f.piece_id) as price_minor, f.purchase_minor, f.supplies_minor, f.regrouped_minor,
                   f.landed_minor, f.estimated_minor, f.in_stock_minor, f.cost_minor, f.minutes, f.sales_minor,
                   f.shipping_minor, f.refunds_minor, f.fees_minor, f.postage_minor, f.packaging_minor, f.uncosted
            from piece_figures f
            where f.piece_id = ?""";

    /** The same rows that the view adds up, one by one. */
    private static final String LINES = """
            select d.id as document_id, d.kind, d.doc_date as date, s.name as supply, p.origin_id,
                   (select min(rl.title)
                    from receipt_piece rp
                    join receipt_line rl on rl.receipt_id = rp.receipt_id and rl.line = rp.line
                    where rp.receipt_id = d.id and rp.piece_id = p.piece_id) as title,
                   p.estimated, cast(sum(p.amount_minor) as bigint) as minor
            from posting p
            join document d on d.id = p.document_id
            left join supply s on s.id = p.supply_id
            where p.piece_id = ? and p.account in ('PIECES', 'COST_OF_PIECES', 'WRITE_OFFS', 'OWN_USE')
              and (p.supply_id is not null or d.kind in ('RECEIPT', 'OPENING', 'REGROUPING', 'SALE', 'REFUND'))
            group by d.id, d.kind, d.doc_date, d.kind_rank, s.name, p.origin_id, p.piece_id, p.estimated
            having sum(p.amount_minor) <> 0
            order by d.doc_date, d.kind_rank, d.id, s.name, p.origin_id, p.estimated""";

    private static final String WAITING = """
            select distinct d.id as bench_entry_id, d.doc_date as date, s.name as supply
            from bench_use_piece up
            join bench_use bu on bu.bench_entry_id = up.bench_entry_id and bu.line = up.line
            join uncosted_use u on u.document_id = bu.bench_entry_id and u.supply_id = bu.supply_id
            join document d on d.id = u.document_id
            join supply s on s.id = u.supply_id
            where up.piece_id = ?
            order by d.doc_date, s.name""";

    /** The other pieces of its regroupings: those first, which are few, so that not all pieces that were ever regrouped are looked at. */
    private static final String PARTS = """
            select o.piece_id, p.code, p.title, o.regrouping_id, o.from_side, f.minutes
            from (select regrouping_id from regrouping_from where piece_id = ?
                  union
                  select regrouping_id from regrouping_to where piece_id = ?) own
            join (select regrouping_id, piece_id, true as from_side from regrouping_from
                  union all
                  select regrouping_id, piece_id, false from regrouping_to) o on o.regrouping_id = own.regrouping_id
            join piece p on p.id = o.piece_id
            join piece_figures f on f.piece_id = o.piece_id
            where o.piece_id <> ?
            order by p.code, o.from_side desc""";

    private final JdbcClient jdbc;
    private final BuyingTrips trips;
    private final CurrentShop shop;

    CostCards(JdbcClient jdbc, BuyingTrips trips, CurrentShop shop) {
        this.jdbc = jdbc;
        this.trips = trips;
        this.shop = shop;
    }

    @Transactional(readOnly = true)
    public CostCard of(UUID piece) {
        PieceFigures figures =
                jdbc.sql(FIGURES).param(piece).query(PieceFigures.class).single();
        List<CostCard.TripPart> trip = trips.of(piece);
        Amount tripShare = trip.stream().map(CostCard.TripPart::share).collect(Amount.sum());
        return new CostCard(
                figures,
                jdbc.sql(LINES).param(piece).query(CostLine.class).list(),
                jdbc.sql(WAITING).param(piece).query(CostCard.Waiting.class).list(),
                trip,
                jdbc.sql(PARTS)
                        .params(piece, piece, piece)
                        .query(CostCard.Part.class)
                        .list(),
                TrueCost.of(Amount.of(figures.landedMinor()), figures.minutes(), shop.hourlyRate(), tripShare));
    }
}
