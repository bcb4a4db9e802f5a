package patinary.selling;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.DocumentKind;
import patinary.lists.LatestDays;
import patinary.lists.ListTotals;
import patinary.lists.Where;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** The sales as a list reads them. */
@Repository
@Transactional(readOnly = true)
class SaleList {

    /** What the list may be narrowed by; {@code only} is "unposted", "owed" or empty. */
    record Search(String words, String channel, String month, String only) {}

    record Row(
            UUID saleId,
            LocalDate docDate,
            String channel,
            String buyer,
            String orderReference,
            @Nullable LocalDate postedOn,
            long netMinor,
            long profitMinor,
            long owedMinor,
            boolean undelivered) {}

    /** The sums over everything found, not only the page shown. */
    record Totals(long sales, long netMinor, long profitMinor, long owedMinor) {}

    private record TitleRow(UUID saleId, String title) {}

    private static final String SALES = " from sale s join document d on d.id = s.id ";

    private static final String UNDELIVERED = """
            (exists (select 1 from sale_undelivered sk where sk.sale_id = s.id)
             and not exists (select 1 from sale_piece sp where sp.sale_id = s.id)
             and not exists (select 1 from sale_line sl where sl.sale_id = s.id and sl.supply_id is not null))""";

    private static final String WORDS = """
            (%s
             or exists (select 1 from sale_line sl where sl.sale_id = s.id and %s)
             or exists (select 1 from (select sale_id, piece_id from sale_piece
                                       union all select sale_id, piece_id from sale_undelivered) sp
                        join piece p on p.id = sp.piece_id
                        where sp.sale_id = s.id and %s))""".formatted(
                    Words.in("s.buyer", "s.order_reference", "s.discount_code"),
                    Words.in("coalesce(sl.bundle_title, '') || ' ' || sl.title"),
                    Words.in("p.code", "p.title"));

    private static final String NET = "sp.price_minor + sp.shipping_minor - sp.refund_minor";
    private static final String COSTS = "sp.fee_minor + sp.postage_minor + sp.packaging_minor + sp.cost_minor";

    /** The sales of the page are found first; only theirs are added up. */
    private static final String PAGE = """
            select s.id as sale_id, d.doc_date, c.name as channel, s.buyer, s.order_reference, s.posted_on,
                   (select cast(coalesce(sum(%1$s), 0) as bigint) from sale_part sp where sp.sale_id = s.id) as net_minor,
                   (select cast(coalesce(sum(%1$s - (%2$s)), 0) as bigint) from sale_part sp where sp.sale_id = s.id) as profit_minor,
                   (select cast(coalesce(sum(p.amount_minor), 0) as bigint)
                    from posting p
                    where p.document_id = s.id and p.origin_id is null and p.account = 'RECEIVABLE')
                   + (select cast(coalesce(sum(p.amount_minor), 0) as bigint)
                      from posting p
                      where p.origin_id = s.id and p.account = 'RECEIVABLE') as owed_minor,
                   %3$s as undelivered
            from (select s.id%4$s%%s
                  order by d.doc_date desc, s.id
                  offset :offset rows fetch next :size rows only) found
            join sale s on s.id = found.id
            join document d on d.id = s.id
            join channel c on c.id = s.channel_id
            order by d.doc_date desc, s.id""".formatted(NET, COSTS, UNDELIVERED, SALES);

    private static final String TOTALS = """
            select (select count(*)%3$s%%1$s) as sales,
                   (select cast(coalesce(sum(%1$s), 0) as bigint)%3$s join sale_part sp on sp.sale_id = s.id %%1$s) as net_minor,
                   (select cast(coalesce(sum(%1$s - (%2$s)), 0) as bigint)%3$s join sale_part sp on sp.sale_id = s.id %%1$s) as profit_minor,
                   (select cast(coalesce(sum(o.amount_minor), 0) as bigint)
                    from owed_to_shop o join sale s on s.id = o.sale_id join document d on d.id = s.id %%1$s) as owed_minor""".formatted(NET, COSTS, SALES);

    private final JdbcClient jdbc;
    private final ListTotals totals;
    private final LatestDays days;

    SaleList(JdbcClient jdbc, ListTotals totals, LatestDays days) {
        this.jdbc = jdbc;
        this.totals = totals;
        this.days = days;
    }

    Page<Row> page(Search search, Window window, long total) {
        Where where = where(search);
        days.narrow(where, DocumentKind.SALE, window);
        List<Row> rows = jdbc.sql(PAGE.formatted(where.sql()))
                .params(where.values())
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Row.class)
                .list();
        return Page.of(window, rows, total);
    }

    Totals totals(Search search) {
        Where where = where(search);
        return totals.of(TOTALS.formatted(where.sql()), where.values(), Totals.class);
    }

    /** What was sold, in one line of text for each sale. */
    Map<UUID, String> titles(List<UUID> sales) {
        if (sales.isEmpty()) {
            return Map.of();
        }
        return jdbc.sql("""
                        select sale_id, coalesce(bundle_title, title) as title
                        from sale_line
                        where sale_id in (:ids)
                        group by sale_id, coalesce(bundle_title, title), coalesce(-bundle_number, line)
                        order by sale_id, min(line)""").param("ids", sales).query(TitleRow.class).list().stream()
                .collect(Collectors.groupingBy(
                        TitleRow::saleId, Collectors.mapping(TitleRow::title, Collectors.joining(", "))));
    }

    private static Where where(Search search) {
        Where where = new Where();
        where.words(WORDS, search.words());
        where.id(search.channel(), "s.channel_id = :channel", "channel");
        month(search.month(), where);
        if (search.only().equals("unposted")) {
            where.and("s.posted_on is null and not " + UNDELIVERED);
        } else if (search.only().equals("owed")) {
            where.and("s.id in (select o.sale_id from owed_to_shop o where o.amount_minor > 0)");
        } else if (search.only().equals("cancelled")) {
            where.and("exists (select 1 from sale_undelivered sk where sk.sale_id = s.id)");
        }
        return where;
    }

    private static void month(String typed, Where where) {
        try {
            YearMonth month = YearMonth.parse(typed);
            where.and("d.doc_date between :first and :last", "first", month.atDay(1))
                    .with("last", month.atEndOfMonth());
        } catch (DateTimeParseException none) {
            // An empty or unreadable month asks for all of them.
        }
    }
}
