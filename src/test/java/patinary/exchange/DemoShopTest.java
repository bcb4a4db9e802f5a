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
        Set<String> empty = new TreeSet<>();
        demo.names().stream()
                .filter(name -> demo.text(name).lines().count() < 2)
                .forEach(empty::add);
        assertThat(empty)
                .as(
                        "no year is sealed yet, she said nothing of her aims, nothing came from a phone, and photos are drawn at the start")
                .containsExactly(
                        "aim.csv",
                        "delivery.csv",
                        "photo.csv",
                        "seal_taken_off.csv",
                        "sealed_posting.csv",
                        "year_seal.csv",
                        "year_seal_open.csv");
    }

    private static long rows(MemoryArchive archive, String table) {
        return archive.text(table + ".csv").lines().count() - 1;
    }
}
