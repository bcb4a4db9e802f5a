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

    /** All that happened to a supply at a place, in order. */
    private static final String EVENTS = """
            select 'lot', ord, line, quantity, cost, 'no' from lot where supply = ? and place = ?
            union all
            select 'drain', ord, line, quantity, 0, by_eye from drain where supply = ? and place = ?
            union all
            select 'count', d.ord, 1, cast(c.quantity as numeric(30, 14)), 0, c.waste
            from supply_count c join doc d on d.id = c.id where c.supply_id = ? and c.place = ?
            union all
            select 'late', ord, 1, 0, amount, 'no' from late where supply = ?
            union all
            select 'back', ord, line, quantity, sale_ord, 'no' from back where supply = ? and 'SHELF' = ?
            order by 2, 3""";

    /** What reached a pot with each document. */
    private static final String INTO = """
            select ord, sum(change) from (
                select u.ord, s.amount - coalesce(
                           lag(s.amount) over (partition by u.drain_ord, u.drain_line order by u.ord), 0) as change
                from use_so_far u
                join shared s on s.grp = u.drain_ord || '/' || u.drain_line || '/' || u.ord
                where s.part = ?)
            group by ord order by ord""";

    /** What a pot was made of. */
    private static final String WITHIN = """
            select distinct u.supply_id
            from bench_use_pot p
            join bench_use u on u.bench_entry_id = p.bench_entry_id and u.line = p.line
            where p.supply_id = ?""";

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
        walkPots();
        refuseTakingWhatCameBack();
        script("40-pieces");
        script("50-supplies");
        script("60-sales");
        script("70-money");
        script("80-figures");
    }

    private void refuseTakingWhatCameBack() throws SQLException {
        long taken = number("""
                select count(*)
                from taking t
                where t.supply_id in (select supply from counted where place = 'SHELF')""");
        if (taken > 0) {
            throw new IllegalStateException(
                    "A supply was taken from a shelf that was counted or had it back; this road does not follow it");
        }
    }

    /** Kept pots, those that went into others first, each with the cost that reached it on that day and later. */
    private void walkPots() throws IOException, SQLException {
        Map<String, Integer> open = new LinkedHashMap<>();
        for (List<Object> row : rows("select kept_as from bench_pot where kept_as <> '' order by kept_as")) {
            open.put((String) row.get(0), 0);
        }
        while (!open.isEmpty()) {
            int before = open.size();
            for (String pot : List.copyOf(open.keySet())) {
                if (rows(WITHIN, pot).stream().noneMatch(row -> open.containsKey(row.get(0)))) {
                    walkPot(pot);
                    open.remove(pot);
                }
            }
            if (open.size() == before) {
                throw new IllegalStateException("pots within each other: " + open.keySet());
            }
        }
    }

    private void walkPot(String pot) throws IOException, SQLException {
        script("35-into-pot");
        List<Object> mixed = rows("""
                select d.ord, cast(b.rest as numeric(30, 14)) from bench_pot b join doc d on d.id = b.bench_entry_id
                where b.kept_as = ?""", pot).get(0);
        long mixedOn = ((Number) mixed.get(0)).longValue();
        long cost = 0;
        for (List<Object> into : rows(INTO, "pot " + pot)) {
            long ord = ((Number) into.get(0)).longValue();
            long amount = ((Number) into.get(1)).longValue();
            if (ord <= mixedOn) {
                cost += amount;
            } else {
                run("insert into late values (?, ?, ?)", ord, pot, amount);
            }
        }
        run("insert into lot values (?, 1, ?, 'BENCH', ?, ?)", mixedOn, pot, mixed.get(1), cost);
        walk(pot, "BENCH");
    }

    /** Counted supplies, one after the other, each through all that happened to it. */
    private void walkCounted() throws SQLException {
        for (List<Object> counted : rows("select supply, place from counted order by supply, place")) {
            walk((String) counted.get(0), (String) counted.get(1));
        }
    }

    private void walk(String supply, String place) throws SQLException {
        CountedSupply walk = new CountedSupply();
        for (List<Object> event : rows(EVENTS, supply, place, supply, place, supply, place, supply, supply, place)) {
            long ord = ((Number) event.get(1)).longValue();
            int line = ((Number) event.get(2)).intValue();
            BigDecimal quantity = (BigDecimal) event.get(3);
            switch ((String) event.get(0)) {
                case "lot" -> walk.arrive(ord, quantity, ((Number) event.get(4)).longValue());
                case "drain" -> walk.drain(new Drain(ord, line, quantity, "yes".equals(event.get(5))));
                case "back" -> walk.back(ord, quantity, ((Number) event.get(4)).longValue());
                case "late" -> walk.reprice(ord, ((Number) event.get(4)).longValue());
                default -> walk.count(ord, quantity, "yes".equals(event.get(5)));
            }
        }
        keep(walk, supply, place);
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
