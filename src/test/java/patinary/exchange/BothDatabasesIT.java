package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Timestamp;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.Patinary;
import patinary.photos.DrawnPhotos;
import patinary.testing.CleanShop;
import patinary.testing.ShopTest;

/**
 * A shop moves from the embedded database to the server and back by backups, and no row of it is another one afterwards: neither
 * what is kept nor what is derived anew on each side. Runs where the server is the database of the other tests.
 */
@ShopTest
@EnabledIfSystemProperty(named = "patinary.test.database", matches = "postgresql")
class BothDatabasesIT {

    /** What each side derives by itself from what came in. */
    private static final List<String> DERIVED = List.of(
            "posting",
            "uncosted_use",
            "strand_move",
            "document_piece",
            "document_sale",
            "sale_part",
            "offer_state",
            "piece_state",
            "piece_figures");

    /** How often a row was saved here, and when it came here. */
    private static final List<String> OF_THE_PLACE = List.of("version", "created_at");

    @Autowired
    private ApplicationContext onServer;

    @TempDir
    private Path folder;

    @Test
    void aBackupGoesFromOneIntoTheOtherAndBack() throws IOException {
        try (ConfigurableApplicationContext embedded = embedded()) {
            CleanShop.empty(embedded);
            archive(embedded).load(Path.of("db", "demo"), Progress.SILENT);
            embedded.getBean(DrawnPhotos.class).hang();
            Map<String, List<String>> rows = rows(embedded);
            assertThat(rows.get("sale")).hasSizeGreaterThan(50);
            assertThat(rows.get("posting")).hasSizeGreaterThan(500);
            assertThat(rows.get("photo")).isNotEmpty();
            Path there = backup(embedded, "there.zip");

            CleanShop.empty(onServer);
            archive(onServer).load(there, Progress.SILENT);
            assertSame(rows(onServer), rows);
            Path back = backup(onServer, "back.zip");
            assertThat(back).hasSameBinaryContentAs(there);

            CleanShop.empty(embedded);
            assertThat(rows(embedded).get("sale")).isEmpty();
            archive(embedded).load(back, Progress.SILENT);
            assertSame(rows(embedded), rows);
        }
    }

    private ConfigurableApplicationContext embedded() {
        Path data = folder.resolve("embedded");
        return new SpringApplicationBuilder(Patinary.class)
                .web(WebApplicationType.NONE)
                .lazyInitialization(true)
                .run(
                        "--patinary.data=" + data,
                        "--spring.datasource.url=jdbc:h2:file:" + data + "/shop;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE",
                        "--spring.datasource.username=sa",
                        "--spring.datasource.password=",
                        "--patinary.backups.by-itself=false");
    }

    private static ShopArchive archive(ApplicationContext program) {
        return program.getBean(ShopArchive.class);
    }

    private Path backup(ApplicationContext program, String name) throws IOException {
        Path file = folder.resolve(name);
        try (OutputStream stream = Files.newOutputStream(file)) {
            archive(program).backup(stream, Progress.SILENT);
        }
        return file;
    }

    private static void assertSame(Map<String, List<String>> found, Map<String, List<String>> meant) {
        assertThat(found.keySet()).isEqualTo(meant.keySet());
        meant.forEach((table, rows) -> assertThat(found.get(table)).as(table).isEqualTo(rows));
    }

    /** Every row of every table, as text that both databases say alike, in an order that none of them decides. */
    private static Map<String, List<String>> rows(ApplicationContext program) {
        JdbcClient jdbc = program.getBean(JdbcClient.class);
        List<String> tables = new ArrayList<>(DERIVED);
        ArchiveTables.ALL.forEach(table -> tables.add(table.name()));
        Map<String, List<String>> all = new TreeMap<>();
        for (String table : tables) {
            all.put(
                    table,
                    jdbc.sql("select * from " + table).query().listOfRows().stream()
                            .map(BothDatabasesIT::text)
                            .sorted()
                            .toList());
        }
        return all;
    }

    private static String text(Map<String, Object> row) {
        Map<String, String> texts = new TreeMap<>();
        row.forEach((column, value) -> texts.put(column.toLowerCase(Locale.ROOT), text(value)));
        texts.keySet().removeAll(OF_THE_PLACE);
        return texts.toString();
    }

    private static String text(Object value) {
        if (value instanceof BigDecimal number) {
            return number.stripTrailingZeros().toPlainString();
        } else if (value instanceof OffsetDateTime moment) {
            return moment.toInstant().toString();
        } else if (value instanceof Timestamp moment) {
            return moment.toInstant().toString();
        } else if (value instanceof byte[] bytes) {
            return HexFormat.of().formatHex(bytes);
        }
        return String.valueOf(value);
    }
}
