package patinary.ledger;

import java.util.Objects;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/**
 * One change after another: who takes the turn is alone with what is recorded until the transaction ends, and everybody who read
 * before knows by the number of changes that there was one.
 */
@Component
public class Turn {

    private final JdbcTemplate jdbc;

    Turn(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** To be taken before the first row is written, so that two changes never wait for each other's rows. */
    public void take() {
        int taken = jdbc.update("update books set changes = changes + 1 where id = 1");
        if (taken != 1) {
            throw new IllegalStateException("The books' own row is missing");
        }
    }

    /** How many changes there were, as far as the transaction sees. */
    long changes() {
        return Objects.requireNonNull(jdbc.queryForObject("select changes from books where id = 1", Long.class));
    }
}
