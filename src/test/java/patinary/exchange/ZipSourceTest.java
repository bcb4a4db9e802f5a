package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ZipSourceTest {

    @TempDir
    private Path folder;

    @Test
    void refusesNamesThatLeadElsewhere() throws IOException {
        for (String name : new String[] {"../shop.csv", "/etc/shop.csv", "a\\shop.csv", "sub/shop.csv", "sub/"}) {
            Path zip = zip(name);

            assertThatThrownBy(() -> new ZipSource(zip)).isInstanceOfSatisfying(ArchiveRefused.class, refused -> {
                assertThat(refused.errors())
                        .extracting(ArchiveError::message)
                        .containsExactly("exchange.error.zip-path");
            });
        }
    }

    @Test
    void refusesMoreEntriesThanAnyShopHas() throws IOException {
        Path zip = zip("a", "b", "c");

        assertThatThrownBy(() -> new ZipSource(zip, 2, 1000)).isInstanceOf(ArchiveRefused.class);
    }

    @Test
    void stopsReadingWhereAFileIsTooLarge() throws IOException {
        Path zip = zip("shop.csv");

        try (InputStream stream = new BoundedStream(Files.newInputStream(zip), "shop.csv", 5)) {
            assertThatThrownBy(stream::readAllBytes).isInstanceOf(ArchiveRefused.class);
        }
        assertThatThrownBy(() -> new ZipSource(zip, 10, 2)).isInstanceOf(ArchiveRefused.class);
    }

    @Test
    void leavesAReadMeAlone() throws IOException {
        try (ZipSource source = new ZipSource(zip("shop.csv", "README.md"))) {
            assertThat(source.names()).containsExactly("shop.csv");
        }
    }

    private Path zip(String... names) throws IOException {
        Path file = Files.createTempFile(folder, "archive", ".zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (String name : names) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write("three".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
                zip.closeEntry();
            }
        }
        return file;
    }
}
