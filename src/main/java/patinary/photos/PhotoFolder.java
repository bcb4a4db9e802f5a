package patinary.photos;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The files of photos: {@code photos/full/ab/abc...jpg} in the data folder, and beside {@code full} the two smaller sizes,
 * which can be made again. A file is named by the SHA-256 of the full size, so it never changes, and what is kept twice
 * is there once.
 *
 * <p>A file is written under another name, forced to the disk, renamed, and its folder forced to the disk, before this
 * returns; only then may a row name it.
 */
@Component
public class PhotoFolder {

    private static final Pattern NAME = Pattern.compile("[0-9a-f]{64}");
    private static final String ENDING = ".jpg";
    private static final String ARRIVING = "arriving";

    private final Path root;
    private final Clock clock;

    PhotoFolder(@Value("${patinary.data:./data}") Path data, Clock clock) {
        this.root = data.resolve("photos");
        this.clock = clock;
    }

    /** Whether this is the name of a photo's file, and so leads nowhere else. */
    public static boolean isName(String sha256) {
        return NAME.matcher(sha256).matches();
    }

    /** The kept file, or nothing where it is missing. */
    public Optional<Path> full(String sha256) {
        return find(sha256, Size.FULL);
    }

    /** Keeps the full size of a photo as it comes from an archive; the caller has looked at it. */
    public void keep(String sha256, InputStream file) throws IOException {
        keep(sha256, Size.FULL, file.readAllBytes());
    }

    Optional<Path> find(String sha256, Size size) {
        Path file = file(sha256, size);
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) ? Optional.of(file) : Optional.empty();
    }

    /** A file that is there already only becomes young again, so that no sweep takes it before its row is written. */
    synchronized void keep(String sha256, Size size, byte[] bytes) throws IOException {
        Path file = file(sha256, size);
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) == bytes.length) {
            Files.setLastModifiedTime(file, FileTime.from(clock.instant()));
            return;
        }
        makeFolder(root.resolve(ARRIVING));
        makeFolder(file.getParent());
        Path part = Files.createTempFile(root.resolve(ARRIVING), "photo", ".part");
        try {
            write(part, bytes);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
        force(file.getParent());
    }

    /** Takes a file away in all sizes, unless it was kept anew since the given moment. */
    synchronized boolean takeAway(String sha256, Instant since) throws IOException {
        Path full = file(sha256, Size.FULL);
        if (Files.exists(full) && !Files.getLastModifiedTime(full).toInstant().isBefore(since)) {
            return false;
        }
        for (Size size : Size.values()) {
            Files.deleteIfExists(file(sha256, size));
        }
        return true;
    }

    /** The names of all files, in any size, that were last kept before the given moment. */
    List<String> names(Instant before) {
        return Stream.of(Size.values())
                .flatMap(size -> files(root.resolve(size.word()), before))
                .map(file -> file.getFileName().toString().replace(ENDING, ""))
                .filter(PhotoFolder::isName)
                .distinct()
                .sorted()
                .toList();
    }

    /** Throws away what was left half written. */
    void tidy(Instant before) throws IOException {
        for (Path part : files(root.resolve(ARRIVING), before).toList()) {
            Files.deleteIfExists(part);
        }
    }

    private static Stream<Path> files(Path folder, Instant before) {
        if (!Files.isDirectory(folder)) {
            return Stream.empty();
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk
                    .filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .filter(file -> isOlder(file, before))
                    .toList()
                    .stream();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static boolean isOlder(Path file, Instant than) {
        try {
            return Files.getLastModifiedTime(file).toInstant().isBefore(than);
        } catch (IOException gone) {
            return false;
        }
    }

    private Path file(String sha256, Size size) {
        if (!isName(sha256)) {
            throw new IllegalArgumentException("No name of a photo: " + sha256);
        }
        return root.resolve(size.word()).resolve(sha256.substring(0, 2)).resolve(sha256 + ENDING);
    }

    private static void makeFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
            force(folder.getParent());
        }
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            channel.force(true);
        }
    }

    /** A folder is forced to the disk like a file, where the system can; some cannot open one. */
    private static void force(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}
