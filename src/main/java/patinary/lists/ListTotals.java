package patinary.lists;

import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.ledger.Readings;

/**
 * What a list comes to in all, beside the few rows that a page shows: how many there are, and their sums. Every row that is meant has to be
 * looked at for it, so it is asked for once until anything is recorded or changed ({@link Readings}).
 */
@Component
public class ListTotals {

    private record Asked(String question, Map<String, Object> values, Class<?> answer) {}

    private final JdbcClient jdbc;
    private final Readings readings;

    ListTotals(JdbcClient jdbc, Readings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    /**
     * The one row that a question gives.
     *
     * @param values of the parameters in the question, by name
     * @param answer a number, or a record that is not changed
     */
    public <T> T of(String question, Map<String, Object> values, Class<T> answer) {
        Map<String, Object> fixed = Map.copyOf(values);
        return readings.ahead(
                new Asked(question, fixed, answer),
                () -> jdbc.sql(question).params(fixed).query(answer).single());
    }
}
