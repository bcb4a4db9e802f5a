package patinary.history;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.exchange.KeptRows;
import patinary.ledger.Trail;

/** How people call what an id stands for; asked once per page. */
@Component
class Names {

    /** The expression that names a row, by table. What is not here is called by the day of its document. */
    private static final Map<String, String> EXPRESSIONS = Map.ofEntries(
            Map.entry("piece", "code || ' ' || title"),
            Map.entry("discount_code", "code"),
            Map.entry("sales_import", "file_name"),
            Map.entry("supply", "name"),
            Map.entry("supply_line", "name"),
            Map.entry("source", "name"),
            Map.entry("channel", "name"),
            Map.entry("money_place", "name"),
            Map.entry("style", "name"),
            Map.entry("object_kind", "name"),
            Map.entry("finish", "name"),
            Map.entry("bundle", "name"),
            Map.entry("parcel", "name"),
            Map.entry("tax_place", "name"),
            Map.entry("vehicle", "name"),
            Map.entry("carrier_service", "name"),
            Map.entry("listing_pattern", "name"));

    private final JdbcClient jdbc;

    Names(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whether rows of a table are called by a name. */
    static boolean has(String table) {
        return EXPRESSIONS.containsKey(table);
    }

    /** The names of what is there, by id. */
    Map<UUID, String> of(String table, Set<UUID> ids) {
        Map<UUID, String> names = new HashMap<>();
        List<UUID> some = new ArrayList<>(ids);
        Optional.ofNullable(EXPRESSIONS.get(table))
                .filter(expression -> !some.isEmpty())
                .ifPresent(expression -> jdbc.sql(
                                "select id, " + expression + " as called from " + table + " where id in (:ids)")
                        .param("ids", some)
                        .query(row -> {
                            names.put(row.getObject("id", UUID.class), row.getString("called"));
                        }));
        return names;
    }

    /** The kind and day of a document that is there. */
    Optional<Map.Entry<String, java.time.LocalDate>> document(UUID id) {
        return jdbc.sql("select kind, doc_date from document where id = ?")
                .param(id)
                .query((row, number) ->
                        Map.entry(row.getString("kind"), row.getObject("doc_date", java.time.LocalDate.class)))
                .optional();
    }

    /** In which dimension a supply is measured. */
    Optional<String> dimension(UUID supply) {
        return jdbc.sql("select dimension from supply where id = ?")
                .param(supply)
                .query(String.class)
                .optional();
    }

    /** Whether a row is there. */
    boolean isThere(Subject subject) {
        // The word may have come with an archive: only a table that is known may stand in a statement.
        return subject.kind().equals(Trail.SETTINGS)
                || KeptRows.tables().contains(subject.kind())
                        && jdbc.sql("select count(*) from " + subject.kind() + " where id = ?")
                                        .param(subject.id())
                                        .query(Long.class)
                                        .single()
                                > 0;
    }
}
