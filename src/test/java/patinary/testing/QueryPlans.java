package patinary.testing;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.sql.DataSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Asks PostgreSQL how it would find the rows of a question where reading whole tables is made as dear as it is in a shop of many
 * years. Whatever still reads a large table whole to pick from it has no index to go by.
 */
public final class QueryPlans {

    private static final JsonMapper JSON = new JsonMapper();

    private final DataSource store;
    private final Set<String> large;

    public QueryPlans(DataSource store, Set<String> large) {
        this.store = store;
        this.large = large;
    }

    /** The large tables that the questions read whole to pick from them, each with the question. */
    public List<String> wholeReads(List<StatementLog.Asked> asked) throws SQLException {
        List<String> found = new ArrayList<>();
        try (Connection connection = store.getConnection()) {
            connection.createStatement().execute("set enable_seqscan = off");
            try {
                for (StatementLog.Asked one : asked) {
                    if (one.sql()
                                    .stripLeading()
                                    .toLowerCase(java.util.Locale.ROOT)
                                    .matches("(?s)(select|with)\\b.*")
                            && !one.sql().contains("for update")) {
                        look(plan(connection, one).get(0).get("Plan"), one.sql(), found);
                    }
                }
            } finally {
                connection.createStatement().execute("set enable_seqscan = on");
            }
        }
        return found;
    }

    private static JsonNode plan(Connection connection, StatementLog.Asked asked) throws SQLException {
        try (PreparedStatement explain = asked.prepare(connection, "explain (format json) ");
                ResultSet plan = explain.executeQuery()) {
            plan.next();
            return JSON.readTree(plan.getString(1));
        }
    }

    private void look(JsonNode node, String sql, List<String> found) {
        String type = node.path("Node Type").asString("");
        String table = node.path("Relation Name").asString("");
        boolean whole = type.equals("Seq Scan") || type.startsWith("Index") && !node.has("Index Cond");
        if (large.contains(table) && whole && node.has("Filter")) {
            found.add(table + " by " + node.path("Filter").asString("") + " in "
                    + sql.strip().replaceAll("\\s+", " "));
        }
        node.path("Plans").forEach(inner -> look(inner, sql, found));
    }
}
