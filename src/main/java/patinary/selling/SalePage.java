package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.measure.Dimension;
import patinary.money.Amount;

/** What the page of one sale shows beside the sale's own words. */
@Component
class SalePage {

    /** A thing on the sale with its share of everything. */
    record Part(
            @Nullable UUID pieceId,
            @Nullable UUID supplyId,
            @Nullable String code,
            String title,
            @Nullable Dimension dimension,
            boolean uncosted,
            boolean undelivered,
            SaleFigures figures) {}

    /** A refund, payment or postage that belongs to the sale, or what was paid to the owner of a piece of it. */
    record Follower(String kind, UUID id, LocalDate docDate, long amountMinor, String note) {}

    /**
     * A supply that the sale was packed in.
     *
     * @param costMinor what the supply cost so far, on the sale's own day and by later receipts and counts; of two rows of
     *     one supply it stands with the first
     * @param waiting whether some of it has no cost yet
     */
    record Packed(
            UUID supplyId,
            String title,
            String typed,
            boolean estimated,
            @Nullable Long costMinor,
            boolean waiting) {}

    record PostingRow(
            LocalDate docDate,
            String kind,
            String account,
            @Nullable String subject,
            @Nullable String category,
            long amountMinor) {}

    private record Stored(
            @Nullable UUID pieceId,
            @Nullable UUID supplyId,
            @Nullable String code,
            String title,
            @Nullable Dimension dimension,
            boolean uncosted,
            boolean undelivered,
            BigDecimal minutes,
            long priceMinor,
            long shippingMinor,
            long refundMinor,
            long feeMinor,
            long postageMinor,
            long packagingMinor,
            long costMinor) {}

    private final JdbcClient jdbc;

    SalePage(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Part> parts(UUID sale) {
        return jdbc.sql("""
                        select sp.piece_id, sp.supply_id, p.code, coalesce(p.title, s.name) as title, s.dimension,
                               coalesce(pf.uncosted, false) or coalesce(su.uncosted, false) as uncosted,
                               sp.undelivered,
                               cast(case when sp.undelivered then 0 else coalesce(pf.minutes, 0) end as numeric(18, 2)) as minutes,
                               sp.price_minor, sp.shipping_minor, sp.refund_minor, sp.fee_minor, sp.postage_minor,
                               sp.packaging_minor, sp.cost_minor
                        from sale_part sp
                        left join piece p on p.id = sp.piece_id
                        left join piece_figures pf on pf.piece_id = sp.piece_id
                        left join supply s on s.id = sp.supply_id
                        left join (select distinct u.supply_id, true as uncosted
                                   from uncosted_use u where u.document_id = :id) su on su.supply_id = sp.supply_id
                        where sp.sale_id = :id
                        order by p.code, s.name""").param("id", sale).query(Stored.class).list().stream()
                .map(SalePage::part)
                .toList();
    }

    List<Packed> packed(UUID sale) {
        return jdbc.sql("""
                        select w.supply_id, l.name || ': ' || s.name as title, w.typed, w.estimated,
                               case when w.nth = 1 then coalesce(c.cost_minor, 0) end as cost_minor,
                               exists (select 1 from uncosted_use u
                                       where u.document_id = :id and u.supply_id = w.supply_id and u.place = 'BENCH') as waiting
                        from (select supply_id, line, typed, estimated,
                                     row_number() over (partition by supply_id order by line) as nth
                              from sale_wrap where sale_id = :id) w
                        join supply s on s.id = w.supply_id
                        join supply_line l on l.id = s.supply_line_id
                        left join (select p.supply_id, cast(sum(p.amount_minor) as bigint) as cost_minor
                                   from posting_about p
                                   where p.about_id = :id
                                     and p.account = 'EXPENSE' and p.supply_id is not null
                                   group by p.supply_id) c on c.supply_id = w.supply_id
                        order by w.line""").param("id", sale).query(Packed.class).list();
    }

    List<Follower> followers(UUID sale) {
        return jdbc.sql("""
                        select f.kind, d.id, d.doc_date, f.amount_minor, d.note
                        from document d
                        join (select r.id, r.sale_id, 'REFUND' as kind, cast(r.shipping_minor + r.tax_minor
                                     + coalesce((select sum(l.amount_minor) from refund_line l where l.refund_id = r.id), 0) as bigint) as amount_minor
                              from refund r
                              union all
                              select y.id, y.sale_id, 'PAYMENT', y.amount_minor from payment y
                              union all
                              select g.id, g.sale_id, 'POSTAGE', g.carriage_minor + g.packing_minor from postage g
                              union all
                              select b.id, b.receipt_id, 'BILL_PAID', b.amount_minor from bill_paid b) f on f.id = d.id
                        where f.sale_id = :id
                        order by d.doc_date, d.kind_rank, d.id""").param("id", sale).query(Follower.class).list();
    }

    List<PostingRow> postings(UUID sale) {
        return jdbc.sql("""
                        select t.doc_date, d.kind, t.account, coalesce(p.code, s.name, m.name) as subject, t.category, t.amount_minor
                        from posting t
                        join document d on d.id = t.document_id
                        left join piece p on p.id = t.piece_id
                        left join supply s on s.id = t.supply_id
                        left join money_place m on m.id = t.place_id
                        where t.document_id in (
                            select id from document where id = :id
                            union all select id from refund where sale_id = :id
                            union all select id from payment where sale_id = :id
                            union all select id from postage where sale_id = :id
                            union all select id from bill_paid where receipt_id = :id)
                        order by t.doc_date, d.kind_rank, d.id, t.line""").param("id", sale).query(PostingRow.class).list();
    }

    /** What was given back already for each piece, and each supply, of a sale, and how much of the supply was sent back. */
    Map<UUID, Before> before(UUID sale) {
        return jdbc.sql("""
                        select coalesce(l.piece_id, l.supply_id) as thing, coalesce(sum(l.amount_minor), 0) as amount_minor,
                               coalesce(sum(case when l.comes_back or l.lost then l.quantity end), 0) as quantity
                        from refund_line l
                        join refund r on r.id = l.refund_id
                        where r.sale_id = :sale
                        group by coalesce(l.piece_id, l.supply_id)""").param("sale", sale).query(Before.class).list().stream()
                .collect(Collectors.toMap(Before::thing, Function.identity()));
    }

    record Before(UUID thing, long amountMinor, BigDecimal quantity) {

        static Before nothing(UUID thing) {
            return new Before(thing, 0, BigDecimal.ZERO);
        }
    }

    /** A supply that was sent back, to the shelf or to be thrown away. */
    record SentBack(LocalDate docDate, String title, Dimension dimension, BigDecimal quantity, boolean lost) {}

    List<SentBack> sentBack(UUID sale) {
        return jdbc.sql("""
                        select d.doc_date, s.name as title, s.dimension, l.quantity, not l.comes_back as lost
                        from refund_line l
                        join refund r on r.id = l.refund_id
                        join document d on d.id = r.id
                        join supply s on s.id = l.supply_id
                        where r.sale_id = :sale and (l.comes_back or l.lost)
                        order by d.doc_date, d.id, l.line""").param("sale", sale).query(SentBack.class).list();
    }

    /** Shipping and tax that were given back already. */
    RefundRest givenBack(UUID sale) {
        return jdbc.sql("""
                        select coalesce(sum(r.shipping_minor), 0) as shipping_minor, coalesce(sum(r.tax_minor), 0) as tax_minor,
                               coalesce(sum(r.fee_back_minor), 0) as fee_minor
                        from refund r where r.sale_id = :sale""").param("sale", sale).query(RefundRest.class).single();
    }

    record RefundRest(long shippingMinor, long taxMinor, long feeMinor) {}

    private static Part part(Stored row) {
        return new Part(
                row.pieceId(),
                row.supplyId(),
                row.code(),
                row.title(),
                row.dimension(),
                row.uncosted(),
                row.undelivered(),
                new SaleFigures(
                        Amount.of(row.priceMinor()),
                        Amount.of(row.shippingMinor()),
                        Amount.of(row.refundMinor()),
                        Amount.of(row.feeMinor()),
                        Amount.of(row.postageMinor()),
                        Amount.of(row.packagingMinor()),
                        Amount.of(row.costMinor()),
                        row.minutes()));
    }
}
