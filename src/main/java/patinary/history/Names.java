package patinary.history;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.exchange.CellValue;
import patinary.exchange.Content;
import patinary.exchange.KeptRows;
import patinary.ledger.Trail;
import patinary.shop.CurrentShop;

/** How people call what an id stands for: one question for all that a page tells. */
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

    /** No row: what the columns of the rest are called, and of which type they are. */
    private static final String FORM = """
            select id, cast(null as varchar(60)) as what, cast(null as varchar(1000)) as called,
                   cast(null as varchar(20)) as dimension, cast(null as date) as on_day
            from document where 1 = 0
            union all
            """;

    private static final String DOCUMENT = "document";
    private static final String SUPPLY = "supply";
    private static final int LETTERS_OF_AN_ID = 36;

    private final JdbcClient jdbc;
    private final CurrentShop shop;

    Names(JdbcClient jdbc, CurrentShop shop) {
        this.jdbc = jdbc;
        this.shop = shop;
    }

    /** What everything stands for that these contents name by an id. */
    Called in(Collection<Content> contents) {
        return in(contents, Set.of());
    }

    /** The same, and which of the subjects are there. */
    Called in(Collection<Content> contents, Set<Subject> subjects) {
        Map<String, Set<UUID>> ids = new TreeMap<>();
        contents.forEach(content -> content.tables()
                .forEach((table, rows) ->
                        rows.forEach(row -> row.forEach((column, text) -> gather(table, column, text, ids)))));
        // The word may have come with an archive: only a table that is known may stand in a statement.
        Map<String, Set<UUID>> sought = subjects.stream()
                .filter(subject -> !subject.kind().equals(Trail.SETTINGS)
                        && KeptRows.tables().contains(subject.kind()))
                .collect(Collectors.groupingBy(
                        Subject::kind, TreeMap::new, Collectors.mapping(Subject::id, Collectors.toSet())));
        Called called = new Called();
        ask(ids, sought, called);
        return called;
    }

    private void gather(String table, String column, String text, Map<String, Set<UUID>> ids) {
        if (text.length() == LETTERS_OF_AN_ID) {
            CellValue.of(shop.currency(), table, column, text)
                    .filter(cell -> cell.value() instanceof UUID)
                    .ifPresent(cell -> cell.references()
                            .forEach(named -> ids.computeIfAbsent(
                                            EXPRESSIONS.containsKey(named) ? named : DOCUMENT, none -> new HashSet<>())
                                    .add((UUID) cell.value())));
        }
    }

    /** One question of several tables, each for its own ids. */
    private void ask(Map<String, Set<UUID>> ids, Map<String, Set<UUID>> sought, Called called) {
        List<String> parts = new ArrayList<>();
        Map<String, Set<UUID>> given = new HashMap<>();
        ids.forEach((table, some) -> {
            parts.add(named(table) + " where id in (:" + table + ")");
            given.put(table, some);
        });
        sought.forEach((table, some) -> {
            parts.add("select id, '" + table + "', null, null, null from " + table + " where id in (:there_" + table
                    + ")");
            given.put("there_" + table, some);
        });
        if (!parts.isEmpty()) {
            jdbc.sql(FORM + String.join(" union all ", parts)).params(given).query(row -> {
                take(row, called);
            });
        }
    }

    private static String named(String table) {
        if (table.equals(DOCUMENT)) {
            return "select id, null, kind, null, doc_date from document";
        }
        return "select id, null, " + EXPRESSIONS.get(table) + ", " + (table.equals(SUPPLY) ? "dimension" : "null")
                + ", null from " + table;
    }

    private static void take(ResultSet row, Called called) throws SQLException {
        UUID id = row.getObject("id", UUID.class);
        LocalDate day = row.getObject("on_day", LocalDate.class);
        if (row.getString("what") != null) {
            called.there().add(new Subject(row.getString("what"), id));
        } else if (day != null) {
            called.documents().put(id, new Called.Document(row.getString("called"), day));
        } else {
            called.names().put(id, row.getString("called"));
            Optional.ofNullable(row.getString("dimension"))
                    .ifPresent(dimension -> called.dimensions().put(id, dimension));
        }
    }
}
