package patinary.insight;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the few things of a list are called, so that the many rows that name them need not carry their names. */
final class Names {

    /** Groups by name, whatever its case; the one without a name comes last. */
    static final Comparator<String> UNNAMED_LAST = Comparator.comparing(String::isEmpty)
            .thenComparing(String.CASE_INSENSITIVE_ORDER)
            .thenComparing(Comparator.naturalOrder());

    private Names() {}

    /** @param table one with a name for each id; never what somebody typed */
    static Map<UUID, String> of(JdbcClient jdbc, String table) {
        Map<UUID, String> names = new HashMap<>();
        jdbc.sql("select id, name from " + table).query(row -> {
            names.put(row.getObject(1, UUID.class), row.getString(2));
        });
        return names;
    }
}
