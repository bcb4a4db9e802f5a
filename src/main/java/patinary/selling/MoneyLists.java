package patinary.selling;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.web.Page;
import patinary.web.Window;

/** The lists of what buyers and channels paid. */
@Component
class MoneyLists {

    record Payment(
            UUID id,
            LocalDate docDate,
            String buyer,
            String place,
            long amountMinor,
            @Nullable UUID saleId,
            boolean firstDay,
            String note) {}

    /** What a buyer owes; the sale's id, or the opening's for what was owed on the first day. */
    record Owing(UUID saleId, LocalDate docDate, String buyer, boolean firstDay, long amountMinor) {}

    record PayoutRow(
            UUID id,
            LocalDate docDate,
            String fromPlace,
            String toPlace,
            long amountMinor,
            long feeMinor,
            String note) {}

    record PostageRow(
            UUID id,
            LocalDate docDate,
            String place,
            long carriageMinor,
            long packingMinor,
            boolean back,
            @Nullable UUID saleId,
            @Nullable String buyer,
            String note) {}

    record PlaceLeft(String name, long amountMinor) {}

    private static final String WINDOW =
            " order by d.doc_date desc, d.id desc offset :offset rows fetch next :size rows only";

    private final JdbcClient jdbc;

    MoneyLists(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Page<Payment> payments(Window window) {
        return page(window, "payment", Payment.class, """
                select y.id, d.doc_date, y.buyer, m.name as place, y.amount_minor, y.sale_id,
                       case when g.id is null then false else true end as first_day, d.note
                from payment y
                left join opening g on g.id = y.sale_id
                join document d on d.id = y.id
                join money_place m on m.id = y.place_id""");
    }

    Page<PayoutRow> payouts(Window window) {
        return page(window, "payout", PayoutRow.class, """
                select o.id, d.doc_date, f.name as from_place, t.name as to_place, o.amount_minor, o.fee_minor, d.note
                from payout o
                join document d on d.id = o.id
                join money_place f on f.id = o.from_place_id
                join money_place t on t.id = o.to_place_id""");
    }

    Page<PostageRow> postages(Window window) {
        return page(window, "postage", PostageRow.class, """
                select g.id, d.doc_date, m.name as place, g.carriage_minor, g.packing_minor, g.back, g.sale_id, s.buyer, d.note
                from postage g
                join document d on d.id = g.id
                join money_place m on m.id = g.place_id
                left join sale s on s.id = g.sale_id""");
    }

    List<Owing> owing() {
        return jdbc.sql("""
                        select o.sale_id, d.doc_date, coalesce(s.buyer, '') as buyer,
                               case when s.id is null then true else false end as first_day, o.amount_minor
                        from owed_to_shop o
                        join document d on d.id = o.sale_id
                        left join sale s on s.id = o.sale_id
                        where o.amount_minor > 0
                        order by d.doc_date, d.id""").query(Owing.class).list();
    }

    /** What each channel holds for her. */
    List<PlaceLeft> channelBalances() {
        return jdbc.sql("""
                        select m.name, coalesce(l.amount_minor, 0) as amount_minor
                        from money_place m
                        left join money_left l on l.place_id = m.id
                        where m.kind = 'CHANNEL'
                        order by m.name""").query(PlaceLeft.class).list();
    }

    private <T> Page<T> page(Window window, String table, Class<T> type, String select) {
        long total = jdbc.sql("select count(*) from " + table).query(Long.class).single();
        List<T> rows = jdbc.sql(select + WINDOW)
                .param("offset", window.offset())
                .param("size", window.size())
                .query(type)
                .list();
        return Page.of(window, rows, total);
    }
}
