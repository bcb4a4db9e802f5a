package patinary.durable;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HalfWrittenTest {

    private static final Instant NOW = Instant.parse("2025-03-10T12:00:00Z");

    private final HalfWritten letters = new HalfWritten(".letter-");

    @TempDir
    private Path folder;

    @Test
    void whatNobodyWroteToForADayGoes() throws IOException {
        age(letters.in(folder), Duration.ofDays(1).plusMillis(1));
        Path lastNight = age(letters.in(folder), Duration.ofDays(1));
        Path now = age(letters.in(folder), Duration.ZERO);

        letters.sweep(folder, NOW);

        assertThat(left()).containsExactlyInAnyOrder(lastNight, now);
    }

    @Test
    void whatIsCalledOtherwiseStaysHoweverOldItIs() throws IOException {
        List<Path> others = List.of(
                old(".letter-1.zip"), old("letter-1.part"), old(".parcel-1.part"), old("x.letter-1.part"), old("part"));

        letters.sweep(folder, NOW);

        assertThat(left()).containsExactlyInAnyOrderElementsOf(others);
    }

    private Path old(String name) throws IOException {
        return age(Files.createFile(folder.resolve(name)), Duration.ofDays(400));
    }

    private static Path age(Path file, Duration age) throws IOException {
        return Files.setLastModifiedTime(file, FileTime.from(NOW.minus(age)));
    }

    private List<Path> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }
}
