package patinary.finishes;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
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

    /** A finish while its rows are read: each brings a step, a supply, or neither. */
    private record Reading(
            UUID id,
            String name,
            String note,
            boolean removed,
            long version,
            List<Finish.Step> steps,
            List<Finish.Need> needs) {

        static Reading of(ResultSet row) throws SQLException {
            return new Reading(
                    row.getObject("id", UUID.class),
                    row.getString("name"),
                    row.getString("note"),
                    row.getBoolean("removed"),
                    row.getLong("version"),
                    new ArrayList<>(),
                    new ArrayList<>());
        }

        Kept kept() {
            return new Kept(id, version, removed, new Finish(name, note, List.copyOf(steps), List.copyOf(needs)));
        }
    }

    private static final String ALL = """
            select f.id, f.name, f.note, f.removed, f.version,
                   s.line as step_line, s.what, s.minutes, s.wait_from, s.wait_to, s.wait_words, s.cautions,
                   n.line as need_line, n.step, n.supply_id, n.typed, n.quantity, n.per_cm2
            from finish f
            cross join (values (1), (2)) part (nth)
            left join finish_step s on part.nth = 1 and s.finish_id = f.id
            left join finish_supply n on part.nth = 2 and n.finish_id = f.id
            where %s
            order by lower(f.name), f.id, s.line, n.line""";

    private final JdbcClient jdbc;

    FinishBook(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All that are offered, by name. */
    public List<Kept> all() {
        return read(jdbc.sql(ALL.formatted("not f.removed")));
    }

    /** All that are offered, by name, and one more even where it was removed. */
    public List<Kept> allWith(UUID id) {
        return read(jdbc.sql(ALL.formatted("(not f.removed or f.id = :id)")).param("id", id));
    }

    /** One, even where it was removed. */
    public Optional<Kept> find(UUID id) {
        return read(jdbc.sql(ALL.formatted("f.id = :id")).param("id", id)).stream()
                .findFirst();
    }

    private static List<Kept> read(JdbcClient.StatementSpec question) {
        Map<UUID, Reading> found = new LinkedHashMap<>();
        question.query(row -> {
            UUID id = row.getObject("id", UUID.class);
            if (!found.containsKey(id)) {
                found.put(id, Reading.of(row));
            }
            add(row, found.get(id));
        });
        return found.values().stream().map(Reading::kept).toList();
    }

    private static void add(ResultSet row, Reading finish) throws SQLException {
        int step = row.getInt("step_line");
        if (!row.wasNull()) {
            finish.steps().add(step(row, step));
        }
        int need = row.getInt("need_line");
        if (!row.wasNull()) {
            finish.needs().add(need(row, need));
        }
    }

    private static Finish.Step step(ResultSet row, int line) throws SQLException {
        int from = row.getInt("wait_from");
        Finish.Wait wait =
                row.wasNull() ? null : new Finish.Wait(from, row.getInt("wait_to"), row.getString("wait_words"));
        List<String> cautions = Arrays.stream(row.getString("cautions").split(" "))
                .filter(id -> !id.isEmpty())
                .toList();
        return new Finish.Step(line, row.getString("what"), row.getInt("minutes"), wait, cautions);
    }

    private static Finish.Need need(ResultSet row, int line) throws SQLException {
        BigDecimal per = row.getBigDecimal("per_cm2");
        return new Finish.Need(
                line,
                row.getInt("step"),
                row.getObject("supply_id", UUID.class),
                row.getString("typed"),
                new Coverage(row.getBigDecimal("quantity"), per));
    }
}
