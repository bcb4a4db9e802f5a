package patinary.fuzz;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;

/** How many rows every table has, but for those of signed-in states, of wrong passwords, and of what the program does by itself. */
final class RowCounts {

    private final JdbcClient jdbc;
    private final String question;

    RowCounts(JdbcClient jdbc) {
        this.jdbc = jdbc;
        List<String> tables = jdbc.sql("""
                        select lower(table_name) from information_schema.tables
                        where lower(table_schema) = 'public' and table_type = 'BASE TABLE'
                          and lower(table_name) not like 'spring_session%' and lower(table_name) <> 'flyway_schema_history'
                          and lower(table_name) not in ('backup_run', 'job_lease', 'sign_in_try')
                        order by 1
                        """).query(String.class).list();
        question = String.join(
                " union all ",
                tables.stream()
                        .map(table -> "select '" + table + "' as t, count(*) as n from " + table)
                        .toList());
    }

    Map<String, Long> now() {
        Map<String, Long> counts = new HashMap<>();
        jdbc.sql(question).query(row -> {
            counts.put(row.getString("t"), row.getLong("n"));
        });
        return counts;
    }

    /** What changed, by table; empty where nothing did. */
    static Map<String, Long> difference(Map<String, Long> before, Map<String, Long> after) {
        Map<String, Long> changed = new TreeMap<>();
        after.forEach((table, rows) -> {
            long more = rows - before.get(table);
            if (more != 0) {
                changed.put(table, more);
            }
        });
        return changed;
    }
}
