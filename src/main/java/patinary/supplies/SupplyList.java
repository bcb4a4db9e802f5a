package patinary.supplies;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.measure.Dimension;
import patinary.web.Page;
import patinary.web.Window;
import patinary.web.Words;

/** The list of supplies with what is left of each; pots that are used up are left out. */
@Repository
class SupplyList {

    /** What is left is added up first and once; H2 would do it again for every supply it is joined to. */
    private static final String ROWS = """
            from (select s.id, s.name, l.name as line_name, l.maker, s.supply_line_id, s.dimension,
                         s.low_quantity as low, q.bench, q.shelf, q.cost_minor, q.waiting,
                         (s.low_quantity is not null and q.bench + q.shelf <= s.low_quantity) as is_low,
                         k.name as pack, k.quantity as pack_quantity
                  from (select a.supply_id,
                               sum(case when a.place = 'BENCH' then a.quantity else 0 end) as bench,
                               sum(case when a.place = 'SHELF' then a.quantity else 0 end) as shelf,
                               cast(sum(a.cost_minor) as bigint) as cost_minor,
                               sum(a.uncosted_quantity) as waiting
                        from (select supply_id, place, quantity, cost_minor, uncosted_quantity from stock_left
                              union all
                              select id, '', 0, 0, 0 from supply) a
                        group by a.supply_id) q
                  join supply s on s.id = q.supply_id
                  join supply_line l on l.id = s.supply_line_id
                  left join (select sp.supply_id, sp.name, sp.quantity,
                                    row_number() over (partition by sp.supply_id order by sp.quantity, sp.name) as nth
                             from supply_pack sp) k on k.supply_id = s.id and k.nth = 1
                  where q.bench <> 0
                     or not exists (select 1 from bench_pot p where p.kept_as = s.id)) r
            """;

    /** Which supplies to show. */
    enum Show {
        LOW,
        WAITING,
        SHELF
    }

    record Filter(
            String words, @Nullable UUID line, @Nullable Show show) {}

    /**
     * One supply.
     *
     * @param bench what is left on the bench, in the base unit; below zero where more was used than bought
     * @param shelf what is left on the retail shelf
     * @param waiting what was used and has no cost yet
     * @param isLow whether bench and shelf together are at or below the mark
     * @param pack the smallest pack it is bought in
     */
    record Row(
            UUID id,
            String name,
            String lineName,
            Dimension dimension,
            @Nullable BigDecimal low,
            BigDecimal bench,
            BigDecimal shelf,
            long costMinor,
            BigDecimal waiting,
            boolean isLow,
            @Nullable String pack,
            @Nullable BigDecimal packQuantity) {}

    private final JdbcClient jdbc;

    SupplyList(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Page<Row> find(Filter filter, Window window) {
        Map<String, Object> parameters = new HashMap<>();
        String where = where(filter, parameters);
        long total = jdbc.sql("select count(*) " + ROWS + where)
                .params(parameters)
                .query(Long.class)
                .single();
        parameters.put("offset", window.offset());
        parameters.put("size", window.size());
        List<Row> rows = jdbc.sql("""
                        select id, name, line_name, dimension, low, bench, shelf, cost_minor, waiting, is_low, pack,
                               pack_quantity
                        """ + ROWS + where + """
                         order by lower(line_name), lower(name), id
                        offset :offset rows fetch next :size rows only
                        """)
                .params(parameters)
                .query(Row.class)
                .list();
        return Page.of(window, rows, total);
    }

    private static String where(Filter filter, Map<String, Object> parameters) {
        StringBuilder where = new StringBuilder(" where 1 = 1");
        if (!filter.words().isBlank()) {
            where.append(" and ").append(Words.in("name", "line_name", "maker"));
            parameters.put("words", Words.anywhere(filter.words()));
        }
        if (filter.line() != null) {
            where.append(" and supply_line_id = :line");
            parameters.put("line", filter.line());
        }
        if (filter.show() != null) {
            where.append(
                    switch (filter.show()) {
                        case LOW -> " and is_low";
                        case WAITING -> " and waiting > 0";
                        case SHELF -> " and shelf <> 0";
                    });
        }
        return where.toString();
    }
}
