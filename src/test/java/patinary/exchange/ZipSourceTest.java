package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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

    /** The library that writes zips refuses to write a name twice; so one is forged in the bytes. */
    @Test
    void refusesANameThatStandsTwice() throws IOException {
        Path zip = zip("a.csv", "b.csv");
        byte[] bytes = Files.readAllBytes(zip);
        String text = new String(bytes, StandardCharsets.ISO_8859_1).replace("b.csv", "a.csv");
        Files.write(zip, text.getBytes(StandardCharsets.ISO_8859_1));

        assertThat(reasons(() -> new ZipSource(zip))).containsExactly("exchange.error.zip-twice");
    }

    @Test
    void refusesWhatUnpacksToAThousandTimesItsSize() throws IOException {
        Path zip = folder.resolve("bomb.zip");
        try (ZipOutputStream stream = new ZipOutputStream(Files.newOutputStream(zip))) {
            stream.putNextEntry(new ZipEntry("shop.csv"));
            for (int megabyte = 0; megabyte < 20; megabyte++) {
                stream.write(new byte[1024 * 1024]);
            }
            stream.closeEntry();
        }

        assertThat(Files.size(zip)).isLessThan(40_000);
        assertThat(reasons(() -> new ZipSource(zip))).containsExactly("exchange.error.zip-bomb");
    }

    /** The size in the list of the files is forged: 1 in place of 5. */
    @Test
    void readsNoMoreThanAFileDeclares() throws IOException {
        Path zip = zip("shop.csv");
        byte[] bytes = Files.readAllBytes(zip);
        int list = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("PK\u0001\u0002");
        assertThat(bytes[list + 24]).isEqualTo((byte) 5);
        bytes[list + 24] = 1;
        Files.write(zip, bytes);

        try (ZipSource source = new ZipSource(zip)) {
            assertThat(reasons(() -> source.open("shop.csv").readAllBytes()))
                    .containsExactly("exchange.error.zip-size");
        }
    }

    /** Its check sum in the list is forged, as if the content had been altered and packed anew. */
    @Test
    void comparesTheCheckSum() throws IOException {
        Path zip = zip("shop.csv");
        byte[] bytes = Files.readAllBytes(zip);
        int list = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("PK\u0001\u0002");
        bytes[list + 16] ^= 1;
        Files.write(zip, bytes);

        try (ZipSource source = new ZipSource(zip)) {
            assertThat(reasons(() -> source.open("shop.csv").readAllBytes())).containsExactly("exchange.error.damaged");
        }
    }

    private static java.util.List<String> reasons(org.assertj.core.api.ThrowableAssert.ThrowingCallable reading) {
        ArchiveRefused refused = org.assertj.core.api.Assertions.catchThrowableOfType(ArchiveRefused.class, reading);
        return refused.errors().stream().map(ArchiveError::message).toList();
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
                zip.write("three".getBytes(StandardCharsets.US_ASCII));
                zip.closeEntry();
            }
        }
        return file;
    }
}
