package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.measure.Dimension;
import patinary.measure.Unit;
import patinary.web.Fmt;
import patinary.web.Page;
import patinary.web.Window;

/** Reads the rows behind the front page. What sold lately goes back thirty days. */
@Repository
@Transactional(readOnly = true)
class Shelf {

    private static final int LATELY = 30;
    private static final int SHOWN = 4;

    private static final String FROM =
            " from (select * from bench_and_shelf union all select * from sold_thing where on_day >= :since) b ";

    /** One thing of a list; amount in minor units, quantity in the supply's base unit. */
    record Row(
            String list,
            String link,
            String code,
            String title,
            @Nullable LocalDate onDay,
            @Nullable Long amountMinor,
            @Nullable BigDecimal quantity,
            @Nullable String dimension) {

        /** The quantity with its unit, or an empty text. */
        public String amount(Fmt fmt) {
            return quantity == null || dimension == null
                    ? ""
                    : fmt.quantity(
                            quantity, Unit.base(Dimension.valueOf(dimension)).code());
        }
    }

    /** A list's figures and its first rows. */
    record Heap(ShelfList list, long count, long amountMinor, List<Row> first) {}

    private record Sum(String list, long things, long amountMinor) {}

    /** A row with the figures of its whole list, so that the lists are read once. */
    private record Ranked(
            String list,
            String link,
            String code,
            String title,
            @Nullable LocalDate onDay,
            @Nullable Long amountMinor,
            @Nullable BigDecimal quantity,
            @Nullable String dimension,
            long things,
            long sumMinor) {

        Row row() {
            return new Row(list, link, code, title, onDay, amountMinor, quantity, dimension);
        }
    }

    private record Asking(LocalDate today) {}

    private final JdbcClient jdbc;
    private final Readings readings;

    Shelf(JdbcClient jdbc, Readings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    /** Every list that has rows, in the order of the front page. */
    List<Heap> heaps(LocalDate today) {
        return readings.ahead(new Asking(today), () -> read(today));
    }

    private List<Heap> read(LocalDate today) {
        Map<String, List<Ranked>> first = jdbc
                .sql("select * from (select b.*, count(*) over (partition by b.list) as things, "
                        + "cast(coalesce(sum(b.amount_minor) over (partition by b.list), 0) as bigint) as sum_minor, "
                        + "row_number() over (partition by b.list order by "
                        + "case when b.list = 'sold' then b.on_day end desc, b.on_day, b.code, b.link, b.title) as place"
                        + FROM
                        + ") ranked where place <= " + SHOWN + " order by list, place")
                .param("since", today.minusDays(LATELY))
                .query(Ranked.class)
                .stream()
                .collect(Collectors.groupingBy(Ranked::list));
        return Arrays.stream(ShelfList.values())
                .filter(list -> first.containsKey(list.word()))
                .map(list -> heap(list, first.get(list.word())))
                .toList();
    }

    /** All rows of one list. */
    Page<Row> rows(ShelfList list, LocalDate today, Window window) {
        List<Row> rows = jdbc.sql(
                        "select b.*" + FROM
                                + "where b.list = :list order by b.on_day, b.code, b.link, b.title offset :offset rows fetch next :size rows only")
                .param("since", today.minusDays(LATELY))
                .param("list", list.word())
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Row.class)
                .list();
        return Page.of(window, rows, total(list, today).things());
    }

    /** What the rows of one list come to. */
    long amount(ShelfList list, LocalDate today) {
        return total(list, today).amountMinor();
    }

    /** Whether nothing has been recorded yet. */
    boolean isEmpty() {
        return jdbc.sql("select count(*) from document").query(Long.class).single() == 0;
    }

    boolean hasMoneyPlace() {
        return jdbc.sql("select count(*) from money_place").query(Long.class).single() > 0;
    }

    private Sum total(ShelfList list, LocalDate today) {
        return jdbc.sql("select cast(:list as varchar(20)) as list, count(*) as things,"
                        + " cast(coalesce(sum(b.amount_minor), 0) as bigint) as amount_minor" + FROM
                        + "where b.list = :list")
                .param("since", today.minusDays(LATELY))
                .param("list", list.word())
                .query(Sum.class)
                .single();
    }

    private static Heap heap(ShelfList list, List<Ranked> ranked) {
        Ranked any = ranked.get(0);
        return new Heap(
                list,
                any.things(),
                any.sumMinor(),
                ranked.stream().map(Ranked::row).toList());
    }
}
