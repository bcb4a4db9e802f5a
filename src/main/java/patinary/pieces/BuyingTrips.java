package patinary.pieces;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.money.Amount;
import patinary.money.Shares;

/** What the trips on which a piece was bought come to for it: their vehicle cost, shared by count. */
@Repository
class BuyingTrips {

    private record Row(UUID tripId, LocalDate date, String purpose, long wholeMinor, int pieces, int before) {}

    /** Pieces are counted once however many receipts name them; the order decides who gets a cent that is left over. */
    private static final String TRIPS = """
            select t.id as trip_id, d.doc_date as date, t.purpose,
                   coalesce((select sum(p.amount_minor) from posting p
                             where p.document_id = t.id and p.account = 'VEHICLE'), 0) as whole_minor,
                   (select count(distinct rp.piece_id) from receipt_piece rp join receipt r on r.id = rp.receipt_id
                    where r.trip_id = t.id) as pieces,
                   (select count(distinct rp.piece_id) from receipt_piece rp join receipt r on r.id = rp.receipt_id
                    where r.trip_id = t.id and cast(rp.piece_id as varchar(36)) < :text) as before
            from (select distinct r.trip_id from receipt_piece rp join receipt r on r.id = rp.receipt_id
                  where rp.piece_id = :piece) own
            join trip t on t.id = own.trip_id
            join document d on d.id = t.id
            order by d.doc_date, t.id""";

    private final JdbcClient jdbc;

    BuyingTrips(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<CostCard.TripPart> of(UUID piece) {
        return jdbc.sql(TRIPS).param("text", piece.toString()).param("piece", piece).query(Row.class).list().stream()
                .map(BuyingTrips::part)
                .toList();
    }

    private static CostCard.TripPart part(Row row) {
        Amount whole = Amount.of(row.wholeMinor());
        Amount share = Shares.equally(whole, row.pieces()).get(row.before());
        return new CostCard.TripPart(row.tripId(), row.date(), row.purpose(), whole, row.pieces(), share);
    }
}
