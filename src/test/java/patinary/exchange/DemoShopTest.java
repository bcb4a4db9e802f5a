package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class DemoShopTest {

    /** BothDatabasesIT has rows of these too, made for it. */
    private static final Map<String, String> EXCUSED = Map.of(
            "photo", "photos are drawn when the shop is shown",
            "year_seal", "whoever tries the demo should find a year to seal",
            "year_seal_open", "belongs to a seal",
            "sealed_posting", "belongs to a seal",
            "seal_taken_off", "the trace of a seal");

    @Test
    void theFilesAreWhatTheGeneratorGives() throws IOException {
        MemoryArchive fresh = DemoArchive.invent();

        try (FolderSource kept = new FolderSource(Path.of("db", "demo"))) {
            assertThat(new TreeSet<>(kept.names())).isEqualTo(new TreeSet<>(fresh.names()));
            for (Map.Entry<String, byte[]> file : fresh.files().entrySet()) {
                assertThat(new String(kept.open(file.getKey()).readAllBytes(), StandardCharsets.UTF_8))
                        .as(file.getKey())
                        .isEqualTo(fresh.text(file.getKey()));
            }
        }
    }

    @Test
    void theArchiveIsRightAndShowsWhatAShopHas() throws IOException {
        MemoryArchive demo = DemoArchive.invent();

        assertThat(new ArchiveCheck(demo, Progress.SILENT).run()).isNotNull();
        assertThat(rows(demo, "piece")).isGreaterThanOrEqualTo(120);
        assertThat(rows(demo, "supply")).isGreaterThanOrEqualTo(25);
        assertThat(rows(demo, "supply_line")).isEqualTo(8);
        assertThat(rows(demo, "receipt")).isGreaterThanOrEqualTo(60);
        assertThat(rows(demo, "bench_entry")).isGreaterThanOrEqualTo(150);
        assertThat(rows(demo, "sale")).isGreaterThanOrEqualTo(90);
        assertThat(rows(demo, "offer_piece")).as("sets are on offer").isGreaterThan(rows(demo, "offer"));
    }

    /** Tests that carry the demo about would not see a fault in a table of which it has no row. */
    @Test
    void hasARowInEveryTableThatAnArchiveCarries() throws IOException {
        MemoryArchive demo = DemoArchive.invent();

        Set<String> empty = new TreeSet<>();
        for (ArchiveTable table : ArchiveTables.ALL) {
            if (rows(demo, table.name()) == 0) {
                empty.add(table.name());
            }
        }

        assertThat(empty).as("excused: %s", EXCUSED).isEqualTo(new TreeSet<>(EXCUSED.keySet()));
    }

    private static long rows(MemoryArchive archive, String table) {
        return archive.text(table + ".csv").lines().count() - 1;
    }
}
