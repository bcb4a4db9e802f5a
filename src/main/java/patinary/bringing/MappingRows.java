package patinary.bringing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** How a mapping is written into the tables, with a file and as a saved one alike. */
@Component
class MappingRows {

    private static final List<String> COLUMNS = List.of(
            "encoding",
            "delimiter",
            "lead_in",
            "has_header",
            "date_form",
            "number_form",
            "each_row",
            "sent",
            "channel_id");

    private final JdbcClient jdbc;

    MappingRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param more columns beside those of the mapping, with their values in the same order */
    void insert(String table, String more, UUID id, Mapping mapping, List<Object> values) {
        List<@Nullable Object> all = new ArrayList<>();
        all.add(id);
        all.addAll(values);
        all.addAll(values(mapping));
        jdbc.sql("insert into " + table + " (id, " + more + ", " + String.join(", ", COLUMNS) + ") values ("
                        + String.join(", ", Collections.nCopies(all.size(), "?")) + ")")
                .params(all)
                .update();
        insertColumns(kind(table), id, mapping);
    }

    void update(String table, UUID id, Mapping mapping) {
        List<@Nullable Object> all = new ArrayList<>(values(mapping));
        all.add(id);
        jdbc.sql("update " + table + " set " + String.join(" = ?, ", COLUMNS) + " = ? where id = ?")
                .params(all)
                .update();
        jdbc.sql("delete from " + table + "_column where " + kind(table) + "_id = ?")
                .param(id)
                .update();
        insertColumns(kind(table), id, mapping);
    }

    Map<Meaning, Integer> columns(String kind, UUID id) {
        Map<Meaning, Integer> columns = new EnumMap<>(Meaning.class);
        jdbc.sql("select meaning, place from sales_" + kind + "_column where " + kind + "_id = ?")
                .param(id)
                .query(row -> {
                    columns.put(Meaning.valueOf(row.getString("meaning")), row.getInt("place"));
                });
        return columns;
    }

    static Mapping read(ResultSet row, Map<Meaning, Integer> columns) throws SQLException {
        String dates = row.getString("date_form");
        String numbers = row.getString("number_form");
        return new Mapping(
                Encoding.valueOf(row.getString("encoding")),
                Delimiter.valueOf(row.getString("delimiter")),
                row.getInt("lead_in"),
                row.getBoolean("has_header"),
                dates == null ? null : DateForm.valueOf(dates),
                numbers == null ? null : NumberForm.valueOf(numbers),
                row.getBoolean("each_row"),
                row.getBoolean("sent"),
                row.getObject("channel_id", UUID.class),
                columns);
    }

    private static List<@Nullable Object> values(Mapping mapping) {
        List<@Nullable Object> values = new ArrayList<>();
        DateForm dates = mapping.dates();
        NumberForm numbers = mapping.numbers();
        values.add(mapping.encoding().name());
        values.add(mapping.delimiter().name());
        values.add(mapping.leadIn());
        values.add(mapping.header());
        values.add(dates == null ? null : dates.name());
        values.add(numbers == null ? null : numbers.name());
        values.add(mapping.eachRow());
        values.add(mapping.sent());
        values.add(mapping.channel());
        return values;
    }

    private void insertColumns(String kind, UUID id, Mapping mapping) {
        mapping.columns()
                .forEach((meaning, place) -> jdbc.sql("insert into sales_" + kind + "_column (" + kind
                                + "_id, meaning, place) values (?, ?, ?)")
                        .params(id, meaning.name(), place)
                        .update());
    }

    private static String kind(String table) {
        return table.substring("sales_".length());
    }
}
