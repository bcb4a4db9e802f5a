package patinary.counting;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Reads what was counted and what was taken, of one supply or of all. */
@Repository
@Transactional(readOnly = true)
class CountFacts {

    /** What is known of a supply's counts and uses. */
    record Facts(List<Spans.Count> counts, List<Spans.Taken> taken) {

        static final Facts NONE = new Facts(List.of(), List.of());
    }

    private record CountRow(
            UUID supplyId,
            UUID countId,
            LocalDate countedOn,
            BigDecimal difference,
            boolean waste,
            @Nullable BigDecimal stepQuantity) {

        Spans.Count count() {
            return new Spans.Count(countId, countedOn, difference, waste, stepQuantity);
        }
    }

    private record TakenRow(UUID supplyId, LocalDate usedOn, String typed, BigDecimal quantity, boolean estimated) {

        Spans.Taken taken() {
            return new Spans.Taken(usedOn, typed, quantity, estimated);
        }
    }

    private static final String COUNTS = """
            select supply_id, count_id, counted_on, difference, waste, step_quantity from count_outcome
            where place = 'BENCH'""";

    private static final String IN_ORDER = " order by supply_id, counted_on, cast(count_id as varchar(36))";

    private static final String TAKEN = "select supply_id, used_on, typed, quantity, estimated from bench_taken";

    private final JdbcClient jdbc;

    CountFacts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Facts of(UUID supply) {
        return new Facts(
                jdbc.sql(COUNTS + " and supply_id = ?" + IN_ORDER).param(supply).query(CountRow.class).stream()
                        .map(CountRow::count)
                        .toList(),
                jdbc.sql(TAKEN + " where supply_id = ? and not of_tool").param(supply).query(TakenRow.class).stream()
                        .map(TakenRow::taken)
                        .toList());
    }

    Map<UUID, List<Spans.Count>> counts() {
        return jdbc.sql(COUNTS + IN_ORDER).query(CountRow.class).stream()
                .collect(Collectors.groupingBy(
                        CountRow::supplyId, Collectors.mapping(CountRow::count, Collectors.toList())));
    }

    Map<UUID, List<Spans.Taken>> taken() {
        return jdbc.sql(TAKEN).query(TakenRow.class).stream()
                .collect(Collectors.groupingBy(
                        TakenRow::supplyId, Collectors.mapping(TakenRow::taken, Collectors.toList())));
    }
}
