package patinary.covering;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The gross figures that others report, and what the books have against them. */
@Service
@Transactional
class GrossBook {

    /** How far from the turn of a time a payment may be counted on its other side; common practice, no source. */
    static final int NEAR = 7;

    private record Sums(
            long salesMinor, long shippingMinor, long taxMinor, long passedMinor, long refundMinor, long feeMinor) {}

    private record Received(long paidHereMinor, long othersMinor, long laterMinor) {}

    private static final String REPORTED = """
            select g.id, g.place_id, m.name as place, g.covers_from, g.covers_to, g.amount_minor, g.with_passed_tax, g.note,
                   g.version
            from gross_reported g
            join money_place m on m.id = g.place_id
            """;

    private static final String PAID =
            "select m.document_id, m.doc_date, m.kind, m.buyer, m.amount_minor from buyer_money m ";

    private static final String IN_ORDER = " order by m.doc_date, cast(m.document_id as varchar(36))";

    private final JdbcClient jdbc;

    GrossBook(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    List<GrossReported> all() {
        return jdbc.sql(REPORTED + " order by g.covers_from desc, lower(m.name), g.id")
                .query(GrossReported.class)
                .list();
    }

    @Transactional(readOnly = true)
    Optional<GrossReported> find(UUID id) {
        return jdbc.sql(REPORTED + " where g.id = ?")
                .param(id)
                .query(GrossReported.class)
                .optional();
    }

    @Transactional(readOnly = true)
    GrossBridge bridge(GrossReported reported) {
        return GrossBridge.of(reported, facts(reported));
    }

    /** Whether another figure of the same balance and days is there. */
    @Transactional(readOnly = true)
    boolean isTaken(GrossReported typed) {
        return all().stream()
                .anyMatch(one -> !one.id().equals(typed.id())
                        && one.placeId().equals(typed.placeId())
                        && one.coversFrom().equals(typed.coversFrom())
                        && one.coversTo().equals(typed.coversTo()));
    }

    void add(GrossReported typed) {
        if (find(typed.id()).isEmpty()) {
            jdbc.sql("insert into gross_reported (id, place_id, covers_from, covers_to, amount_minor, with_passed_tax,"
                            + " note, version) values (?, ?, ?, ?, ?, ?, ?, 0)")
                    .params(
                            typed.id(),
                            typed.placeId(),
                            typed.coversFrom(),
                            typed.coversTo(),
                            typed.amountMinor(),
                            typed.withPassedTax(),
                            typed.note())
                    .update();
        }
    }

    void change(GrossReported typed) {
        int changed = jdbc.sql(
                        "update gross_reported set place_id = ?, covers_from = ?, covers_to = ?, amount_minor = ?,"
                                + " with_passed_tax = ?, note = ?, version = version + 1 where id = ? and version = ?")
                .params(
                        typed.placeId(),
                        typed.coversFrom(),
                        typed.coversTo(),
                        typed.amountMinor(),
                        typed.withPassedTax(),
                        typed.note(),
                        typed.id(),
                        typed.version())
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException("Reported gross " + typed.id() + " is stale");
        }
    }

    void remove(UUID id) {
        jdbc.sql("delete from gross_reported where id = ?").param(id).update();
    }

    /** What was paid near the turns of its time, and may be counted on their other side. */
    @Transactional(readOnly = true)
    List<GrossFacts.Paid> near(GrossReported reported) {
        LocalDate from = reported.coversFrom();
        LocalDate to = reported.coversTo();
        return jdbc.sql(PAID + """
                        where m.place_id = :place
                          and (m.doc_date between :before and :start or m.doc_date between :end and :after)
                        """ + IN_ORDER)
                .param("place", reported.placeId())
                .param("before", from.minusDays(NEAR))
                .param("start", from.plusDays(NEAR - 1L))
                .param("end", to.minusDays(NEAR - 1L))
                .param("after", to.plusDays(NEAR))
                .query(GrossFacts.Paid.class)
                .list();
    }

    @Transactional(readOnly = true)
    List<GrossFacts.Paid> otherSide(GrossReported reported) {
        return jdbc.sql(PAID + " join gross_other_side o on o.document_id = m.document_id and o.gross_id = ?"
                        + " where m.place_id = ?" + IN_ORDER)
                .params(reported.id(), reported.placeId())
                .query(GrossFacts.Paid.class)
                .list();
    }

    /** Says which of what is near is counted on the other side. */
    void turn(GrossReported reported, Collection<UUID> documents) {
        List<UUID> near =
                near(reported).stream().map(GrossFacts.Paid::documentId).toList();
        jdbc.sql("delete from gross_other_side where gross_id = ?")
                .param(reported.id())
                .update();
        documents.stream()
                .distinct()
                .filter(near::contains)
                .forEach(document -> jdbc.sql("insert into gross_other_side (gross_id, document_id) values (?, ?)")
                        .params(reported.id(), document)
                        .update());
    }

    private GrossFacts facts(GrossReported of) {
        Sums sums = jdbc.sql("""
                        select coalesce(sum(g.price_minor), 0) as sales_minor,
                               coalesce(sum(g.shipping_minor), 0) as shipping_minor,
                               coalesce(sum(g.tax_minor), 0) as tax_minor,
                               coalesce(sum(g.passed_minor), 0) as passed_minor,
                               coalesce(sum(g.refund_minor), 0) as refund_minor,
                               coalesce(sum(g.fee_minor), 0) as fee_minor
                        from gathered_sale g
                        where g.place_id = ? and g.doc_date between ? and ?""")
                .params(of.placeId(), of.coversFrom(), of.coversTo())
                .query(Sums.class)
                .single();
        Received received = jdbc.sql("""
                        select coalesce(sum(case when m.kind = 'SALE' and m.gathers_at = m.place_id
                                                 then m.amount_minor else 0 end), 0) as paid_here_minor,
                               coalesce(sum(case when m.kind = 'SALE' and m.gathers_at <> m.place_id
                                                 then m.amount_minor else 0 end), 0) as others_minor,
                               coalesce(sum(case when m.kind = 'PAYMENT' then m.amount_minor else 0 end), 0) as later_minor
                        from buyer_money m
                        where m.place_id = ? and m.doc_date between ? and ?""")
                .params(of.placeId(), of.coversFrom(), of.coversTo())
                .query(Received.class)
                .single();
        return new GrossFacts(
                sums.salesMinor(),
                sums.shippingMinor(),
                sums.taxMinor(),
                sums.passedMinor(),
                sums.refundMinor(),
                sums.feeMinor() + payoutFees(of),
                received.paidHereMinor(),
                received.othersMinor(),
                received.laterMinor(),
                income(of),
                otherSide(of));
    }

    private long income(GrossReported of) {
        return jdbc.sql("""
                        select coalesce(-sum(p.amount_minor), 0)
                        from posting p
                        join other_income i on i.id = p.document_id
                        where p.account = 'OTHER_INCOME' and i.place_id = ? and p.doc_date between ? and ?""")
                .params(of.placeId(), of.coversFrom(), of.coversTo())
                .query(Long.class)
                .single();
    }

    private long payoutFees(GrossReported of) {
        return jdbc.sql("""
                        select coalesce(sum(p.amount_minor), 0)
                        from posting p
                        join payout o on o.id = p.document_id
                        where p.account = 'FEES' and o.from_place_id = ? and p.doc_date between ? and ?""")
                .params(of.placeId(), of.coversFrom(), of.coversTo())
                .query(Long.class)
                .single();
    }
}
