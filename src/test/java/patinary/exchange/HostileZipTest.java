package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.lifecycle.BeforeContainer;
import patinary.invented.InventedShop;

/**
 * Zips that are cut, altered, or made to do harm. Whatever is done to one, it is refused with its reasons, or it is read as the very shop
 * that was written: never half of it, and never another.
 */
class HostileZipTest {

    private static final int PER_MILLE = 1000;

    private static byte[] whole = {};
    private static Map<String, String> content = Map.of();

    @BeforeContainer
    static void writeOne() throws IOException {
        Path file = Files.createTempFile("whole", ".zip");
        new InventedShop(3, 3).write(file);
        whole = Files.readAllBytes(file);
        content = read(file);
        Files.delete(file);
    }

    @Property(tries = 40)
    void cutAnywhereItIsRefused(@ForAll @IntRange(max = PER_MILLE - 1) int where) {
        byte[] cut = Arrays.copyOf(whole, (int) ((long) whole.length * where / PER_MILLE));

        assertThat(readOrReasons(cut)).isNotEqualTo(content).isNotEmpty();
    }

    @Property(tries = 60)
    void withAFewBytesAlteredItIsRefusedOrStillTheSame(
            @ForAll long where,
            @ForAll @IntRange(min = 1, max = 255) int by,
            @ForAll @IntRange(min = 1, max = 3) int times) {
        byte[] altered = whole.clone();
        for (int i = 0; i < times; i++) {
            altered[(int) Math.floorMod(where + i * 7919L, (long) altered.length)] ^= (byte) by;
        }

        assertRefusedOrSame(altered);
    }

    /** The list at the end says what is in a zip: most of what can be forged is there. */
    @Property(tries = 60)
    void withTheListOfItsFilesAlteredItIsRefusedOrStillTheSame(
            @ForAll @IntRange(max = 4000) int fromTheEnd, @ForAll @IntRange(min = 1, max = 255) int by) {
        byte[] altered = whole.clone();
        altered[Math.max(0, altered.length - 1 - fromTheEnd)] ^= (byte) by;

        assertRefusedOrSame(altered);
    }

    private static void assertRefusedOrSame(byte[] altered) {
        Map<String, String> read = readOrReasons(altered);
        if (!read.containsKey("refused")) {
            assertThat(read).isEqualTo(content);
        }
    }

    private static Map<String, String> readOrReasons(byte[] bytes) {
        Path file = null;
        try {
            file = Files.write(Files.createTempFile("altered", ".zip"), bytes);
            return read(file);
        } catch (ArchiveRefused refused) {
            assertThat(refused.errors()).isNotEmpty();
            return Map.of("refused", refused.errors().toString());
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } finally {
            delete(file);
        }
    }

    private static void delete(Path file) {
        try {
            if (file != null) {
                Files.delete(file);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Everything that a load would see, after the checks that a load makes. */
    private static Map<String, String> read(Path file) throws IOException {
        try (ArchiveSource source = ShopArchive.source(file)) {
            new ArchiveCheck(source, Progress.SILENT).run();
            Map<String, String> read = new TreeMap<>();
            for (String name : source.names()) {
                try (var stream = source.open(name)) {
                    read.put(name, new String(stream.readAllBytes(), StandardCharsets.UTF_8));
                }
            }
            return read;
        }
    }
}
