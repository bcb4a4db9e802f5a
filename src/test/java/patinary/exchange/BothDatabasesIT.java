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

    private static final String SEALED_UNTIL = "2025-12-31";

    /** Which move a sealed posting came from: asked no more, and in no archive. */
    private static final List<String> OF_AN_OPEN_YEAR = List.of("move_no", "meant_piece_id");

    @Autowired
    private ApplicationContext onServer;

    @TempDir
    private Path folder;

    @Test
    void aBackupGoesFromOneIntoTheOtherAndBack() throws IOException {
        try (ConfigurableApplicationContext embedded = embedded()) {
            CleanShop.empty(embedded);
            archive(embedded).load(withASeal(), Progress.SILENT);
            embedded.getBean(DrawnPhotos.class).hang();
            Map<String, List<String>> rows = rows(embedded);
            assertThat(rows.get("sale")).hasSizeGreaterThan(50);
            assertThat(rows.get("posting")).hasSizeGreaterThan(500);
            ArchiveTables.ALL.forEach(
                    table -> assertThat(rows.get(table.name())).as(table.name()).isNotEmpty());
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

    /** The demo shop with its first year sealed a second time; what it sealed is kept as it comes in. */
    private static ArchiveSource withASeal() throws IOException {
        MemoryArchive sealed = new MemoryArchive();
        try (FolderSource demo = new FolderSource(Path.of("db", "demo"))) {
            for (String name : demo.names()) {
                sealed.withBytes(name, demo.open(name).readAllBytes());
            }
        }
        String seal = "5ea15ea1-0000-4000-8000-000000000001";
        return sealed.without("manifest.csv")
                .with(
                        "year_seal.csv",
                        "id,date,note,recorded_at,tax_year,postings_hash,calculation_version",
                        seal + "," + SEALED_UNTIL + ",As filed,2026-03-02T18:00:00Z,2025,,1")
                .with("year_seal_open.csv", "year_seal_id,item,how_many,amount", seal + ",UNCOSTED,2,12.50")
                .with(
                        "seal_taken_off.csv",
                        "id,tax_year,sealed_at,postings_hash,calculation_version,taken_off_at,taken_off_by,reason",
                        "5ea15ea1-0000-4000-8000-000000000002,2025,2026-02-20T18:00:00Z,,1,2026-03-01T18:00:00Z,Demo,"
                                + "A receipt of December was found");
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
        if (texts.containsKey("meant_piece_id") && texts.get("doc_date").compareTo(SEALED_UNTIL) <= 0) {
            texts.keySet().removeAll(OF_AN_OPEN_YEAR);
        }
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
