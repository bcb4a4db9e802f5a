package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.util.unit.DataSize;
import org.springframework.web.multipart.MultipartException;

class ArrivingArchiveTest {

    private static final Instant NOW = Instant.parse("2025-06-01T12:00:00Z");
    private static final int MEGA = 1024 * 1024;

    @TempDir
    private Path data;

    private long free = Long.MAX_VALUE;
    private final List<byte[]> taken = new ArrayList<>();

    @Test
    void isKeptWhileItIsTakenInAndNotAfter() throws IOException {
        byte[] archive = {1, 2, 3};

        arriving(10).take(new ByteArrayInputStream(archive), 3, this::read);

        assertThat(taken).containsExactly(archive);
        assertThat(left()).isEmpty();
    }

    @Test
    void goesAwayWhereItIsRefused() throws IOException {
        assertThatThrownBy(() -> arriving(10).take(new ByteArrayInputStream(new byte[1]), 1, file -> {
                    throw new ArchiveRefused(ArchiveError.ofFile("", "no-zip"));
                }))
                .isInstanceOf(ArchiveRefused.class);
        assertThat(left()).isEmpty();
    }

    @Test
    void largerThanTheLimitIsRefusedAnnouncedOrNot() throws IOException {
        assertThat(refused(arriving(10), new ByteArrayInputStream(new byte[11]), -1))
                .isEqualTo("exchange.error.arriving-size");
        assertThat(refused(arriving(10), new ByteArrayInputStream(new byte[10]), 17L * MEGA))
                .isEqualTo("exchange.error.arriving-size");
        assertThat(taken).isEmpty();
        assertThat(left()).isEmpty();
    }

    @Test
    void theShopKeepsItsRoomOnTheDisk() throws IOException {
        free = ArrivingArchive.LEFT_FREE + 5;
        ArrivingArchive arriving = arriving(100L * MEGA);

        arriving.take(new ByteArrayInputStream(new byte[5]), 5, this::read);
        assertThat(refused(arriving, new ByteArrayInputStream(new byte[6]), 6))
                .isEqualTo("exchange.error.arriving-room");
        assertThat(refused(arriving, new Filling(40 * MEGA), -1))
                .as("the disk fills while it comes, and its size was not announced")
                .isEqualTo("exchange.error.arriving-room");
        assertThat(taken).hasSize(1);
        assertThat(left()).isEmpty();
    }

    @Test
    void oneComesAtATime() throws IOException {
        ArrivingArchive arriving = arriving(10);

        arriving.take(
                new ByteArrayInputStream(new byte[1]),
                1,
                file -> assertThat(refused(arriving, new ByteArrayInputStream(new byte[1]), 1))
                        .isEqualTo("exchange.error.arriving-other"));
        arriving.take(new ByteArrayInputStream(new byte[2]), 2, this::read);

        assertThat(taken).containsExactly(new byte[2]);
    }

    @Test
    void whatBreaksOffIsNotTakenIn() throws IOException {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the connection is gone");
            }
        };

        assertThatThrownBy(() -> arriving(10).take(broken, 5, this::read)).isInstanceOf(MultipartException.class);
        assertThat(taken).isEmpty();
        assertThat(left()).isEmpty();
    }

    @Test
    void whatAKilledProgramLeftGoesAfterADay() throws IOException {
        Path folder = Files.createDirectories(data.resolve(ArrivingArchive.FOLDER));
        Path old = Files.createFile(folder.resolve(".shop-archive-1.part"));
        Path young = Files.createFile(folder.resolve(".shop-archive-2.part"));
        Files.setLastModifiedTime(old, FileTime.from(NOW.minus(Duration.ofHours(25))));
        Files.setLastModifiedTime(young, FileTime.from(NOW.minus(Duration.ofHours(23))));

        arriving(10).take(new ByteArrayInputStream(new byte[1]), 1, this::read);

        assertThat(left()).containsExactly(young);
    }

    @ParameterizedTest
    @CsvSource({"2147483648, 2 GB", "15728640, 15 MB", "1000, 1000 bytes", "1536, 1536 bytes", "0, 0 bytes"})
    void aLimitIsSaidAsItIsSet(long bytes, String words) {
        assertThat(ArrivingArchive.words(DataSize.ofBytes(bytes))).isEqualTo(words);
    }

    private ArrivingArchive arriving(long most) {
        return new ArrivingArchive(DataSize.ofBytes(most), data, Clock.fixed(NOW, ZoneOffset.UTC), folder -> free);
    }

    private void read(Path file) throws IOException {
        taken.add(Files.readAllBytes(file));
    }

    private String refused(ArrivingArchive arriving, InputStream coming, long said) {
        return catchThrowableOfType(ArchiveRefused.class, () -> arriving.take(coming, said, this::read))
                .errors()
                .get(0)
                .message();
    }

    private List<Path> left() throws IOException {
        try (Stream<Path> files = Files.list(data.resolve(ArrivingArchive.FOLDER))) {
            return files.toList();
        }
    }

    /** Each byte that comes leaves less room. */
    private final class Filling extends InputStream {

        private int left;

        Filling(int bytes) {
            left = bytes;
        }

        @Override
        public int read() {
            free--;
            return left-- > 0 ? 0 : -1;
        }
    }
}
