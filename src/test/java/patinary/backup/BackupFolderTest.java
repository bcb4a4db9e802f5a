package patinary.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupFolderTest {

    private static final Instant NOW = Instant.parse("2025-03-10T12:00:00Z");

    @TempDir
    private Path root;

    @Test
    void aFileHasItsNameOnlyWhenItIsWholeAndWasReadBack() throws IOException {
        BackupFolder folder = new BackupFolder(root.resolve("new"));

        Path file = folder.write(
                name(1),
                stream -> {
                    stream.write("whole".getBytes(StandardCharsets.US_ASCII));
                    assertThat(names(root.resolve("new"))).noneMatch(BackupFolder::isName);
                },
                part -> assertThat(part).hasContent("whole"));

        assertThat(file).hasContent("whole");
        assertThat(names(root.resolve("new"))).containsExactly(name(1));
    }

    @Test
    void whatFailsLeavesNothingAndTakesNothingAway() throws IOException {
        BackupFolder folder = new BackupFolder(root);
        folder.write(name(1), stream -> stream.write(1), part -> {});

        assertThatThrownBy(() -> folder.write(
                        name(1),
                        stream -> {
                            stream.write(2);
                            throw new IOException("no space left");
                        },
                        part -> {}))
                .hasMessage("no space left");
        assertThatThrownBy(() -> folder.write(name(2), stream -> stream.write(3), part -> {
                    throw new IllegalStateException("not what was written");
                }))
                .hasMessage("not what was written");

        assertThat(names(root)).containsExactly(name(1));
        assertThat(root.resolve(name(1))).hasBinaryContent(new byte[] {1});
    }

    @Test
    void keepsTheLatestAndLeavesOtherFilesAlone() throws IOException {
        BackupFolder folder = new BackupFolder(root);
        for (int minute = 1; minute <= 4; minute++) {
            folder.write(name(minute), stream -> stream.write(1), part -> {});
        }
        Path dead = Files.createFile(root.resolve(".shop-backup-1.part"));
        Path atWork = Files.createFile(root.resolve(".shop-backup-2.part"));
        Files.createFile(root.resolve("shop-backup-of-hers.zip"));
        Files.setLastModifiedTime(dead, FileTime.from(NOW.minusSeconds(100_000)));
        Files.setLastModifiedTime(atWork, FileTime.from(NOW.minusSeconds(80_000)));

        folder.keepOnly(2, NOW);

        assertThat(names(root)).containsExactly(".shop-backup-2.part", name(3), name(4), "shop-backup-of-hers.zip");
        assertThat(folder.files()).extracting(BackupFolder.Kept::name).containsExactly(name(4), name(3));
    }

    @Test
    void aFolderThatIsNotThereHasNone() throws IOException {
        assertThat(new BackupFolder(root.resolve("none")).files()).isEmpty();
    }

    private static String name(int minute) {
        return BackupFolder.name(LocalDateTime.of(2025, 3, 10, 3, minute));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
