package patinary.second;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * The books of an archive, reckoned a second time by another road: its files are read into a scratch database, and SQL over sets
 * takes the place of code over documents. It knows the handbook and the archive's form, and no class of the program.
 */
final class SecondBooks implements AutoCloseable {

    private final Connection scratch;
    private final Map<String, Integer> notes = new TreeMap<>();

    private SecondBooks(Connection scratch) {
        this.scratch = scratch;
    }

    static SecondBooks of(Path archive) throws IOException, SQLException {
        SecondBooks books = new SecondBooks(
                DriverManager.getConnection("jdbc:h2:mem:" + UUID.randomUUID() + ";DATABASE_TO_UPPER=FALSE", "sa", ""));
        books.run("create alias cents deterministic for 'patinary.second.Cents.of'");
        books.run("create alias half_up deterministic for 'patinary.second.Cents.halfUp'");
        books.readFiles(archive);
        books.reckon();
        return books;
    }

    private void readFiles(Path archive) throws IOException, SQLException {
        try (Stream<Path> files = Files.list(archive)) {
            for (Path file : files.filter(name -> name.toString().endsWith(".csv"))
                    .sorted()
                    .toList()) {
                String table = file.getFileName().toString().replace(".csv", "");
                run("create table " + table + " as select * from csvread('"
                        + file.toAbsolutePath().toString().replace("'", "''")
                        + "', null, 'charset=UTF-8 caseSensitiveColumnNames=true')");
            }
        }
    }

    private void reckon() throws IOException, SQLException {
        script("10-documents");
        script("20-receipts");
        for (long turns = number("select coalesce(max(turn), 0) from charge"); turns > 0; turns--) {
            script("21-charge-turn");
        }
        script("30-lots");
        walkCounted();
        refuseLatePots();
        script("40-pieces");
        script("50-supplies");
        script("60-sales");
        script("70-money");
        script("80-figures");
    }

    private void refuseLatePots() throws SQLException {
        long late = number("""
                select count(*)
                from outflow o
                join doc d on d.ord = o.drain_ord
                join bench_use_pot u on u.bench_entry_id = d.id and cast(u.line as int) = o.drain_line
                where o.ord <> o.drain_ord or o.supply in (select supply from counted)""");
        if (late > 0) {
            throw new IllegalStateException("Cost reached a kept pot after it was mixed; this road does not follow it");
        }
    }

    /** Counted supplies, one after the other, each through all that happened to it. */
    private void walkCounted() throws SQLException {
        for (List<Object> counted : rows("select supply, place from counted order by supply, place")) {
            String supply = (String) counted.get(0);
            String place = (String) counted.get(1);
            CountedSupply walk = new CountedSupply();
            for (List<Object> event : rows("""
                    select 'lot', ord, line, quantity, cost, 'no' from lot where supply = ? and place = ?
                    union all
                    select 'drain', ord, line, quantity, 0, by_eye from drain where supply = ? and place = ?
                    union all
                    select 'count', d.ord, 1, cast(c.quantity as numeric(30, 14)), 0, c.waste
                    from supply_count c join doc d on d.id = c.id where c.supply_id = ? and c.place = ?
                    order by 2, 3""", supply, place, supply, place, supply, place)) {
                long ord = ((Number) event.get(1)).longValue();
                int line = ((Number) event.get(2)).intValue();
                BigDecimal quantity = (BigDecimal) event.get(3);
                switch ((String) event.get(0)) {
                    case "lot" -> walk.arrive(ord, quantity, ((Number) event.get(4)).longValue());
                    case "drain" -> walk.drain(new Drain(ord, line, quantity, "yes".equals(event.get(5))));
                    default -> walk.count(ord, quantity, "yes".equals(event.get(5)));
                }
            }
            keep(walk, supply, place);
        }
    }

    private void keep(CountedSupply walk, String supply, String place) throws SQLException {
        for (CountedSupply.Outflow out : walk.outflows) {
            run(
                    "insert into outflow values (?, ?, ?, ?, ?, ?)",
                    out.ord(),
                    out.drainOrd(),
                    out.drainLine(),
                    supply,
                    place,
                    out.amount());
        }
        for (CountedSupply.CountResult count : walk.counts) {
            run(
                    "insert into count_result values (?, ?, ?, ?, ?, ?)",
                    count.ord(),
                    supply,
                    place,
                    count.quantity(),
                    count.writtenOff(),
                    count.found());
        }
        walk.notes.forEach(note -> notes.merge(note, 1, Integer::sum));
    }

    /** How often counts came out which way. */
    Map<String, Integer> countNotes() {
        return notes;
    }

    Connection scratch() {
        return scratch;
    }

    long number(String sql, Object... values) throws SQLException {
        return ((Number) rows(sql, values).get(0).get(0)).longValue();
    }

    /** Rows of two columns or more as a map from the first column to the second. */
    Map<String, Long> amounts(String sql, Object... values) throws SQLException {
        Map<String, Long> amounts = new LinkedHashMap<>();
        for (List<Object> row : rows(sql, values)) {
            amounts.put(String.valueOf(row.get(0)), ((Number) row.get(1)).longValue());
        }
        return amounts;
    }

    List<List<Object>> rows(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = scratch.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            try (ResultSet found = statement.executeQuery()) {
                List<List<Object>> rows = new ArrayList<>();
                while (found.next()) {
                    List<Object> row = new ArrayList<>();
                    for (int column = 1; column <= found.getMetaData().getColumnCount(); column++) {
                        row.add(found.getObject(column));
                    }
                    rows.add(row);
                }
                return rows;
            }
        }
    }

    void run(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = scratch.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.execute();
        }
    }

    private void script(String name) throws IOException, SQLException {
        try (InputStream text = SecondBooks.class.getResourceAsStream(name + ".sql");
                Statement statement = scratch.createStatement()) {
            for (String sql : new String(text.readAllBytes(), StandardCharsets.UTF_8).split(";\\s*\\n")) {
                if (!sql.isBlank()) {
                    statement.execute(sql);
                }
            }
        }
    }

    @Override
    public void close() throws SQLException {
        scratch.close();
    }
}
