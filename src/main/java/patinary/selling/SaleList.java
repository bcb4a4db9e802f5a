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
import org.springframework.stereotype.Component;
import patinary.web.Ids;
import patinary.web.Page;
import patinary.web.Window;

/** The sales as a list reads them. */
@Component
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

    private static final String SALES = """
            from (select s.id as sale_id, d.doc_date, s.channel_id, c.name as channel, s.buyer, s.order_reference, s.posted_on,
                         s.discount_code,
                         cast(sum(a.net_minor) as bigint) as net_minor,
                         cast(sum(a.profit_minor) as bigint) as profit_minor,
                         cast(sum(a.owed_minor) as bigint) as owed_minor,
                         exists (select 1 from sale_undelivered sk where sk.sale_id = s.id)
                             and not exists (select 1 from sale_piece sp where sp.sale_id = s.id)
                             and not exists (select 1 from sale_line sl where sl.sale_id = s.id and sl.supply_id is not null)
                             as undelivered
                  from (select sp.sale_id,
                               sp.price_minor + sp.shipping_minor - sp.refund_minor as net_minor,
                               sp.price_minor + sp.shipping_minor - sp.refund_minor - sp.fee_minor - sp.postage_minor
                                   - sp.packaging_minor - sp.cost_minor as profit_minor,
                               0 as owed_minor
                        from sale_part sp
                        union all
                        select o.sale_id, 0, 0, o.amount_minor from owed_to_shop o
                        union all
                        select s.id, 0, 0, 0 from sale s) a
                  join sale s on s.id = a.sale_id
                  join document d on d.id = s.id
                  join channel c on c.id = s.channel_id
                  group by s.id, d.doc_date, s.channel_id, c.name, s.buyer, s.order_reference, s.posted_on, s.discount_code) r""";

    private final JdbcClient jdbc;

    SaleList(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Page<Row> page(Search search, Window window, long total) {
        Where where = where(search).with("size", window.size()).with("offset", window.offset());
        List<Row> rows = jdbc.sql("select r.sale_id, r.doc_date, r.channel, r.buyer, r.order_reference, r.posted_on,"
                        + " r.net_minor, r.profit_minor, r.owed_minor, r.undelivered " + SALES + where.sql()
                        + " order by r.doc_date desc, r.sale_id offset :offset rows fetch next :size rows only")
                .params(where.values())
                .query(Row.class)
                .list();
        return Page.of(window, rows, total);
    }

    Totals totals(Search search) {
        Where where = where(search);
        return jdbc.sql("""
                        select count(*) as sales,
                               cast(coalesce(sum(r.net_minor), 0) as bigint) as net_minor,
                               cast(coalesce(sum(r.profit_minor), 0) as bigint) as profit_minor,
                               cast(coalesce(sum(r.owed_minor), 0) as bigint) as owed_minor
                        """ + SALES + where.sql())
                .params(where.values())
                .query(Totals.class)
                .single();
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
        where.words("""
                (lower(r.buyer) like :words escape '!' or lower(r.order_reference) like :words escape '!'
                 or lower(r.discount_code) like :words escape '!'
                 or exists (select 1 from sale_line sl
                            where sl.sale_id = r.sale_id and lower(coalesce(sl.bundle_title, '') || ' ' || sl.title) like :words escape '!')
                 or exists (select 1 from (select sale_id, piece_id from sale_piece
                                           union all select sale_id, piece_id from sale_undelivered) sp
                            join piece p on p.id = sp.piece_id
                            where sp.sale_id = r.sale_id
                              and (lower(p.code) like :words escape '!' or lower(p.title) like :words escape '!')))""", search.words());
        Ids.read(search.channel()).ifPresent(id -> where.and("r.channel_id = :channel", "channel", id));
        month(search.month(), where);
        if (search.only().equals("unposted")) {
            where.and("r.posted_on is null and not r.undelivered");
        } else if (search.only().equals("owed")) {
            where.and("r.owed_minor > 0");
        } else if (search.only().equals("cancelled")) {
            where.and("exists (select 1 from sale_undelivered sk where sk.sale_id = r.sale_id)");
        }
        return where;
    }

    private static void month(String typed, Where where) {
        try {
            YearMonth month = YearMonth.parse(typed);
            where.and("r.doc_date between :first and :last", "first", month.atDay(1))
                    .with("last", month.atEndOfMonth());
        } catch (DateTimeParseException none) {
            // An empty or unreadable month asks for all of them.
        }
    }
}
