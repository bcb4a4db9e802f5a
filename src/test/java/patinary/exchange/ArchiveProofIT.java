package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.photos.DrawnPhotos;
import patinary.testing.CleanShop;
import patinary.testing.ShopTest;

/** A backup is proven where a shop can be made of it, and a fault that is put in by hand is found. */
@ShopTest
class ArchiveProofIT {

    @Autowired
    private ArchiveProof proof;

    @Autowired
    private ShopArchive archive;

    @Autowired
    private DrawnPhotos drawn;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private ApplicationContext program;

    @TempDir
    private Path folder;

    @Test
    void aBackupOfTheDemoShopIsProvenWithAllItsRowsPhotosAndSums() throws IOException {
        archive.load(Path.of("db", "demo"), Progress.SILENT);
        drawn.hang();
        Path file = backup();
        long pieces = jdbc.sql("select count(*) from piece").query(Long.class).single();
        long photos = jdbc.sql("select count(distinct sha256) from photo")
                .query(Long.class)
                .single();

        CleanShop.empty(program);
        ArchiveProof.Proof proven = proof.run(file);

        assertThat(proven.different()).isEmpty();
        assertThat(proven.sums()).isEmpty();
        assertThat(proven.isGood()).isTrue();
        assertThat(proven.rows()).containsEntry("piece.csv", pieces);
        assertThat(proven.photos()).isEqualTo(photos).isPositive();
        assertThat(backup()).as("a backup of what came of a backup").hasSameBinaryContentAs(file);
    }

    @Test
    void aSumThatIsNotWhatTheDocumentsGiveIsTold() throws IOException {
        Files.writeString(
                folder.resolve("shop.csv"),
                "name,currency,minor_digits,costing_method,hourly_rate,tax_table,first_day,time_zone\r\n"
                        + "Invented,USD,2,FIFO,20.00,plain,2025-01-01,UTC\r\n");
        Files.writeString(folder.resolve("figures.csv"), "year,account,amount\r\n2025,PIECES,1.00\r\n");
        list("shop.csv", "figures.csv");

        ArchiveProof.Proof proven = proof.run(folder);

        assertThat(proven.sums()).containsExactly("2025 PIECES: 1.00, 0");
        assertThat(proven.isGood()).isFalse();
    }

    private void list(String... files) throws IOException {
        StringBuilder manifest = new StringBuilder("name,value\r\nformat," + ArchiveTables.FORMAT + "\r\n");
        for (String file : files) {
            manifest.append(file)
                    .append(',')
                    .append(Manifest.hash(Files.newInputStream(folder.resolve(file))))
                    .append("\r\n");
        }
        Files.writeString(folder.resolve(Manifest.FILE), manifest);
    }

    private Path backup() throws IOException {
        Path file = Files.createTempFile("proof", ".zip");
        file.toFile().deleteOnExit();
        try (OutputStream stream = Files.newOutputStream(file)) {
            archive.backup(stream, Progress.SILENT);
        }
        return file;
    }
}
