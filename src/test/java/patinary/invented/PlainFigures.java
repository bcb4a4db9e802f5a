package patinary.invented;

import java.time.LocalDate;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The numbers of each page that reads a whole shop, asked for in the fastest way we know: written apart from the program's own queries
 * and views, straight from the tables, every row and column read and nothing made of it. A page that takes much longer than this does
 * something twice, or something else than reading. Where the numbers cannot be had by SQL alone (days on offer without pauses, curves),
 * the rows are read from which they are reckoned.
 */
final class PlainFigures {

    private static final String OWN = " not exists (select 1 from piece_owner po where po.piece_id = p.id) ";

    private static final String OFFERS = """
            select op.piece_id, op.offer_id, os.started_on, os.until_day
            from offer_piece op join offer_state os on os.offer_id = op.offer_id""";
    private static final String PAUSES = "select offer_id, paused_from, paused_to from offer_pause";
    private static final String SOLD = """
            select piece_id, sold_on, came_back from sale_part where piece_id is not null and not undelivered""";
    private static final String TAKEN_OVER = """
            select op.piece_id, d.doc_date from opening_piece op join document d on d.id = op.opening_id""";

    private static final String CELLS = """
            select p.kind_id, p.style_id, count(*), count(f.sold_on),
                   sum(case when f.offered_on <= :first then 1 else 0 end),
                   sum(f.sales_minor + f.shipping_minor - f.refunds_minor - f.fees_minor - f.postage_minor - f.packaging_minor),
                   sum(f.supplies_minor), sum(f.minutes), sum(f.minutes * f.minutes), sum(f.purchase_minor)
            from piece_figures f join piece p on p.id = f.piece_id
            where (f.state <> 'GONE' or exists (select 1 from letting_go lg where lg.piece_id = p.id)) and""" + OWN + "group by p.kind_id, p.style_id";

    private final JdbcClient jdbc;
    private final LocalDate today;
    private int asked;

    PlainFigures(JdbcClient jdbc, LocalDate today) {
        this.jdbc = jdbc;
        this.today = today;
    }

    /** The queries of a page; none where it is only timed. */
    List<String> of(String page) {
        return switch (page) {
            case "" -> home();
            case "supplies" -> supplies();
            case "moves" -> moves();
            case "moves/money" -> money();
            case "moves/next" -> List.of(CELLS, """
                        select be.finish_id, p.kind_id, p.style_id, bu.supply_id, count(*), sum(bu.quantity)
                        from bench_entry be
                        join bench_piece bp on bp.bench_entry_id = be.id
                        join piece p on p.id = bp.piece_id
                        join bench_use bu on bu.bench_entry_id = be.id
                        where be.finish_id is not null
                        group by be.finish_id, p.kind_id, p.style_id, bu.supply_id""");
            case "moves/seasons", "moves/days" -> List.of(OFFERS, PAUSES, SOLD, TAKEN_OVER);
            case "moves/hours" -> hours();
            case "moves/what-to-pay" -> List.of(CELLS, """
                        select f.piece_id, p.kind_id, p.style_id, f.offered_on, f.sold_on, f.sales_minor, f.shipping_minor,
                               f.refunds_minor, f.fees_minor, f.postage_minor, f.packaging_minor, f.supplies_minor, f.minutes,
                               f.purchase_minor, f.state
                        from piece_figures f join piece p on p.id = f.piece_id where""" + OWN);
            default -> List.of();
        };
    }

    /**
     * Runs the queries of a page and reads whatever they give. Each is written a little differently each time, since the embedded database
     * would answer the same one with what it found before.
     */
    void read(String page) {
        for (String query : of(page)) {
            jdbc.sql(query + "\n-- " + asked++)
                    .param("today", today)
                    .param("first", today.minusDays(364))
                    .param("lately", today.minusDays(30))
                    .query(row -> {
                        for (int i = 1; i <= row.getMetaData().getColumnCount(); i++) {
                            row.getObject(i);
                        }
                    });
        }
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

    private static List<String> moves() {
        return List.of(
                """
                select p.style_id, count(*) from piece_state ps join piece p on p.id = ps.piece_id
                where ps.found_on between :first and :today and""" + OWN + "group by p.style_id",
                """
                select p.style_id, count(distinct p.id),
                       count(distinct case when os.until_day is null or os.until_day > :today then p.id end)
                from offer_state os
                join offer_piece op on op.offer_id = os.offer_id
                join piece p on p.id = op.piece_id
                where os.started_on <= :today and (os.until_day is null or os.until_day > :first) and""" + OWN + "group by p.style_id",
                """
                select p.style_id, count(distinct case when not sp.came_back then p.id end), sum(sp.cost_minor),
                       sum(sp.price_minor + sp.shipping_minor - sp.refund_minor),
                       sum(sp.fee_minor + sp.postage_minor + sp.packaging_minor)
                from sale_part sp join piece p on p.id = sp.piece_id
                where sp.sold_on between :first and :today and not sp.undelivered and""" + OWN + "group by p.style_id",
                """
                select sp.piece_id, sp.sold_on, os.offer_id, os.started_on, os.until_day
                from sale_part sp
                join offer_piece op on op.piece_id = sp.piece_id
                join offer_state os on os.offer_id = op.offer_id
                where sp.sold_on between :first and :today and not sp.undelivered""");
    }

    private static List<String> money() {
        return List.of("""
                select p.style_id, count(*), sum(sp.price_minor), sum(sp.shipping_minor), sum(sp.refund_minor), sum(sp.fee_minor),
                       sum(sp.postage_minor), sum(sp.packaging_minor), sum(sp.cost_minor), sum(f.minutes)
                from sale_part sp
                join piece p on p.id = sp.piece_id
                join piece_figures f on f.piece_id = sp.piece_id
                where sp.sold_on between :first and :today and not sp.undelivered and""" + OWN + "group by p.style_id", """
                select p.id, p.style_id, f.found_on, s.doc_date, s.amount_minor
                from piece_figures f
                join piece p on p.id = f.piece_id
                join piece_stock s on s.piece_id = f.piece_id
                where (f.in_stock_minor <> 0 or f.stocked_until >= :first) and s.doc_date <= :today and""" + OWN);
    }

    private static List<String> hours() {
        return List.of("""
                select extract(year from doc_date), extract(month from doc_date), sum(profit_minor) from document_profit
                where doc_date between :first and :today group by extract(year from doc_date), extract(month from doc_date)""", """
                select d.doc_date, sum(be.minutes) from bench_entry be join document d on d.id = be.id
                where d.doc_date between :first and :today group by d.doc_date""", """
                select sp.piece_id, sp.sold_on, sp.price_minor, sp.shipping_minor, sp.refund_minor, sp.fee_minor, sp.postage_minor,
                       sp.packaging_minor, sp.cost_minor, f.minutes
                from sale_part sp join piece_figures f on f.piece_id = sp.piece_id
                where sp.sold_on between :first and :today and not sp.undelivered""");
    }
}
