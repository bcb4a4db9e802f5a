package patinary.invented;

import java.time.LocalDate;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The numbers of the two lists that read a whole shop, asked for in the fastest way we know: written apart from the program's own queries
 * and views, straight from the tables, every row and column read and nothing made of it. Those of the pages about what moves are
 * {@link patinary.insight.PlainNumbers}.
 */
final class PlainFigures {

    private final JdbcClient jdbc;
    private final LocalDate today;
    private int asked;

    PlainFigures(JdbcClient jdbc, LocalDate today) {
        this.jdbc = jdbc;
        this.today = today;
    }

    /** The queries of a page; none where it is only timed. */
    private static List<String> of(String page) {
        return switch (page) {
            case "" -> home();
            case "supplies" -> supplies();
            default -> List.of();
        };
    }

    /**
     * Runs the queries of a page and reads whatever they give; says whether it has any. Each is written a little differently each time,
     * since the embedded database would answer the same one with what it found before.
     */
    boolean read(String page) {
        List<String> queries = of(page);
        for (String query : queries) {
            jdbc.sql(query + "\n-- " + asked++)
                    .param("lately", today.minusDays(30))
                    .query(row -> {
                        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                            row.getObject(i);
                        }
                    });
        }
        return !queries.isEmpty();
    }

    private static List<String> home() {
        return List.of(
                """
                select f.state, count(*), sum(f.in_stock_minor) from piece_figures f
                where f.state in ('FOUND', 'BENCH', 'READY') group by f.state""",
                "select count(*), sum(in_stock_minor) from piece_figures where in_stock_minor <> 0",
                """
                select count(*) from piece_figures p
                where p.purchase_minor + p.regrouped_minor = 0 and p.state not in ('SOLD', 'GONE')""",
                """
                select count(*), sum(price_minor + shipping_minor - refund_minor) from sale_part
                where sold_on >= :lately and not undelivered""",
                "select count(*) from sale where posted_on is null",
                "select place, count(*), sum(cost_minor) from supply_stock where quantity <> 0 group by place");
    }

    private static List<String> supplies() {
        return List.of("""
                select s.id, s.name, l.name, q.bench, q.shelf, q.cost_minor
                from supply s
                join supply_line l on l.id = s.supply_line_id
                left join (select supply_id, sum(case when place = 'BENCH' then quantity end) as bench,
                                  sum(case when place = 'SHELF' then quantity end) as shelf, sum(cost_minor) as cost_minor
                           from supply_stock group by supply_id) q on q.supply_id = s.id
                order by lower(l.name), lower(s.name), s.id
                fetch first 50 rows only""");
    }
}
