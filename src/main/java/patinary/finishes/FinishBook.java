package patinary.finishes;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.measure.Coverage;

/** The finishes as they are kept. */
@Repository
@Transactional(readOnly = true)
public class FinishBook {

    /**
     * A kept finish.
     *
     * @param removed whether it is offered no more; entries that followed it still name it
     */
    public record Kept(UUID id, long version, boolean removed, Finish finish) {}

    private record Head(UUID id, String name, String note, boolean removed, long version) {}

    private record StepRow(UUID finishId, Finish.Step step) {}

    private record NeedRow(UUID finishId, Finish.Need need) {}

    private final JdbcClient jdbc;

    FinishBook(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All that are offered, by name. */
    public List<Kept> all() {
        return read("not f.removed", null);
    }

    /** One, even where it was removed. */
    public Optional<Kept> find(UUID id) {
        return read("f.id = :id", id).stream().findFirst();
    }

    private List<Kept> read(String which, @Nullable UUID id) {
        Map<UUID, List<StepRow>> steps = query(
                        "select s.* from finish_step s join finish f on f.id = s.finish_id where " + which
                                + " order by s.line",
                        id)
                .query(FinishBook::step)
                .list()
                .stream()
                .collect(Collectors.groupingBy(StepRow::finishId));
        Map<UUID, List<NeedRow>> needs = query(
                        "select n.* from finish_supply n join finish f on f.id = n.finish_id where " + which
                                + " order by n.line",
                        id)
                .query(FinishBook::need)
                .list()
                .stream()
                .collect(Collectors.groupingBy(NeedRow::finishId));
        return query(
                        "select f.id, f.name, f.note, f.removed, f.version from finish f where " + which
                                + " order by lower(f.name), f.id",
                        id)
                .query(Head.class)
                .list()
                .stream()
                .map(head ->
                        kept(head, steps.getOrDefault(head.id(), List.of()), needs.getOrDefault(head.id(), List.of())))
                .toList();
    }

    private JdbcClient.StatementSpec query(String sql, @Nullable UUID id) {
        JdbcClient.StatementSpec statement = jdbc.sql(sql);
        return id == null ? statement : statement.param("id", id);
    }

    private static Kept kept(Head head, List<StepRow> steps, List<NeedRow> needs) {
        Finish finish = new Finish(
                head.name(),
                head.note(),
                steps.stream().map(StepRow::step).toList(),
                needs.stream().map(NeedRow::need).toList());
        return new Kept(head.id(), head.version(), head.removed(), finish);
    }

    private static StepRow step(ResultSet row, int number) throws SQLException {
        int from = row.getInt("wait_from");
        Finish.Wait wait =
                row.wasNull() ? null : new Finish.Wait(from, row.getInt("wait_to"), row.getString("wait_words"));
        List<String> cautions = Arrays.stream(row.getString("cautions").split(" "))
                .filter(id -> !id.isEmpty())
                .toList();
        return new StepRow(
                row.getObject("finish_id", UUID.class),
                new Finish.Step(row.getInt("line"), row.getString("what"), row.getInt("minutes"), wait, cautions));
    }

    private static NeedRow need(ResultSet row, int number) throws SQLException {
        BigDecimal per = row.getBigDecimal("per_cm2");
        return new NeedRow(
                row.getObject("finish_id", UUID.class),
                new Finish.Need(
                        row.getInt("line"),
                        row.getInt("step"),
                        row.getObject("supply_id", UUID.class),
                        row.getString("typed"),
                        new Coverage(row.getBigDecimal("quantity"), per)));
    }
}
