package patinary.insight;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads one day of each piece. */
final class PieceDays {

    private PieceDays() {}

    /** @param asked gives a piece and its day, each piece once */
    static Map<UUID, LocalDate> of(JdbcClient.StatementSpec asked) {
        Map<UUID, LocalDate> days = new HashMap<>();
        asked.query(row -> {
            days.put(row.getObject(1, UUID.class), row.getObject(2, LocalDate.class));
        });
        return days;
    }
}
