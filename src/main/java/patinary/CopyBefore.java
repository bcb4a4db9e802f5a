package patinary;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.sql.DataSource;

/**
 * Copies the embedded database before it is changed: a zip with the database's own file, which leads back when it is unpacked into the
 * data folder. The last three are kept.
 */
final class CopyBefore {

    private static final int KEPT = 3;
    private static final String NAME = "before-version-";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);

    private final Path folder;
    private final Clock clock;

    CopyBefore(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * Makes a copy.
     *
     * @param from the version of what is copied
     * @return whether there is one; another database than H2, or one that is in no file, is not copied
     * @throws UncheckedIOException where it cannot be written: then nothing should be changed
     */
    boolean make(DataSource store, String from) {
        try (Connection connection = store.getConnection()) {
            if (!connection.getMetaData().getURL().startsWith("jdbc:h2:file:")) {
                return false;
            }
            Files.createDirectories(folder);
            String moment = MOMENT.format(clock.instant().atZone(ZoneOffset.UTC));
            Path part = Files.createTempFile(folder, "." + NAME, ".part");
            try {
                copy(connection, part);
                Files.move(
                        part, folder.resolve(NAME + moment + "-from-" + from + ".zip"), StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(part);
            }
            tidy();
            return true;
        } catch (SQLException | IOException failed) {
            throw new UncheckedIOException(
                    new IOException("No copy could be made before the upgrade: " + failed, failed));
        }
    }

    private static void copy(Connection connection, Path to) throws SQLException, IOException {
        try (PreparedStatement backup = connection.prepareStatement("backup to ?")) {
            backup.setString(1, to.toAbsolutePath().toString());
            backup.execute();
        }
        try (FileChannel channel = FileChannel.open(to, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private void tidy() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> copies = files.filter(
                            file -> file.getFileName().toString().startsWith(NAME))
                    .sorted(Comparator.comparing(Path::toString).reversed())
                    .toList();
            for (Path old : copies.subList(Math.min(KEPT, copies.size()), copies.size())) {
                Files.deleteIfExists(old);
            }
        }
    }
}
