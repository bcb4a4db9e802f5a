package patinary;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.GZIPOutputStream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.h2.jdbcx.JdbcDataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ConfigurableApplicationContext;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.invented.InventedShop;

/**
 * Writes what a small invented shop looked like in earlier versions of the tables, as the rows that could stand there then. Run by
 * hand with the number of a version when it is released; what is there is never renewed.
 */
final class UpgradeData {

    private static final Path FOLDER = Path.of("src", "test", "resources", "upgrades");

    private UpgradeData() {}

    public static void main(String[] versions) throws IOException, SQLException {
        Path scratch = Files.createTempDirectory("upgrade-data");
        Path zip = scratch.resolve("shop.zip");
        new InventedShop(5, 10).write(zip);
        List<String> settings = new ArrayList<>(ThrowAwayShop.embedded(scratch));
        settings.add("--patinary.data=" + scratch);
        try (ConfigurableApplicationContext context = Errand.start(settings)) {
            context.getBean(ShopArchive.class).load(zip, Progress.SILENT);
            for (String version : versions) {
                Files.createDirectories(FOLDER);
                Path file = FOLDER.resolve("V" + version + ".sql.gz");
                try (Writer writer = new OutputStreamWriter(
                        new GZIPOutputStream(Files.newOutputStream(file)), StandardCharsets.UTF_8)) {
                    write(context.getBean(DataSource.class), version, writer);
                }
            }
        }
        System.exit(0);
    }

    private static void write(DataSource newest, String version, Writer writer) throws SQLException, IOException {
        JdbcDataSource old = new JdbcDataSource();
        old.setURL("jdbc:h2:mem:v" + version + ";DB_CLOSE_DELAY=-1");
        Flyway.configure()
                .dataSource(old)
                .locations("classpath:db/migration")
                .target(version)
                .load()
                .migrate();
        try (Connection then = old.getConnection();
                Connection now = newest.getConnection()) {
            for (String table : inOrder(then)) {
                if (isEmpty(then, table)) {
                    rows(now, table, columns(then, table), writer);
                }
            }
        }
    }

    /** A table stands behind those it refers to. */
    private static Set<String> inOrder(Connection old) throws SQLException {
        Set<String> all = new TreeSet<>();
        try (ResultSet tables = old.getMetaData().getTables(null, "PUBLIC", null, new String[] {"BASE TABLE"})) {
            while (tables.next()) {
                String name = tables.getString("TABLE_NAME");
                if (!name.startsWith("SPRING_") && !name.startsWith("flyway")) {
                    all.add(name);
                }
            }
        }
        Set<String> ordered = new LinkedHashSet<>();
        for (String table : all) {
            put(old, table, ordered);
        }
        return ordered;
    }

    private static void put(Connection old, String table, Set<String> ordered) throws SQLException {
        if (ordered.contains(table)) {
            return;
        }
        try (ResultSet keys = old.getMetaData().getImportedKeys(null, "PUBLIC", table)) {
            while (keys.next()) {
                if (!keys.getString("PKTABLE_NAME").equals(table)) {
                    put(old, keys.getString("PKTABLE_NAME"), ordered);
                }
            }
        }
        ordered.add(table);
    }

    private static List<String> columns(Connection old, String table) throws SQLException {
        List<String> columns = new ArrayList<>();
        try (ResultSet names = old.getMetaData().getColumns(null, "PUBLIC", table, null)) {
            while (names.next()) {
                columns.add(names.getString("COLUMN_NAME").toLowerCase(Locale.ROOT));
            }
        }
        return columns;
    }

    private static boolean isEmpty(Connection old, String table) throws SQLException {
        try (Statement statement = old.createStatement();
                ResultSet count = statement.executeQuery("select count(*) from " + table)) {
            count.next();
            return count.getLong(1) == 0;
        }
    }

    private static void rows(Connection now, String table, List<String> columns, Writer writer)
            throws SQLException, IOException {
        String names = String.join(", ", columns);
        try (Statement statement = now.createStatement();
                ResultSet rows = statement.executeQuery("select " + names + " from " + table + " order by " + names)) {
            while (rows.next()) {
                List<String> values = new ArrayList<>();
                for (int i = 1; i <= columns.size(); i++) {
                    values.add(literal(rows.getObject(i)));
                }
                writer.write("insert into " + table.toLowerCase(Locale.ROOT) + " (" + names + ") values ("
                        + String.join(", ", values) + ");\n");
            }
        }
    }

    /** Both databases read a day, a moment and an id from a text. */
    private static String literal(@Nullable Object value) {
        if (value == null || value instanceof Boolean) {
            return String.valueOf(value);
        }
        if (value instanceof Number) {
            return new BigDecimal(value.toString()).toPlainString();
        }
        return "'" + value.toString().replace("'", "''") + "'";
    }
}
