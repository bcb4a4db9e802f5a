package patinary.backup;

import java.io.BufferedOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import patinary.durable.HalfWritten;

/**
 * A folder with backups. A file gets its name only when it is whole, read back and forced to the disk; what fails leaves
 * nothing. Files with other names are never touched.
 */
final class BackupFolder {

    /** Writes the content of a backup. */
    @FunctionalInterface
    interface Writing {

        void to(OutputStream stream) throws IOException;
    }

    /** Reads what was written and throws where it is not whole. */
    @FunctionalInterface
    interface ReadingBack {

        void of(Path file) throws IOException;
    }

    /** A backup in the folder. */
    record Kept(String name, long bytes, Instant at) {}

    private static final Pattern NAME = Pattern.compile("shop-backup-\\d{4}-\\d{2}-\\d{2}-\\d{6}\\.zip");
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT);
    private static final HalfWritten BACKUP = new HalfWritten(".shop-backup-");

    private final Path folder;

    BackupFolder(Path folder) {
        this.folder = folder;
    }

    /** What a backup of this moment, by the shop's clock, is called. */
    static String name(LocalDateTime moment) {
        return "shop-backup-" + MOMENT.format(moment) + ".zip";
    }

    static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }

    /**
     * Writes a file and gives it its name. The folder is made where it is missing.
     *
     * @return the file
     */
    Path write(String name, Writing writing, ReadingBack readingBack) throws IOException {
        Files.createDirectories(folder);
        Path part = BACKUP.in(folder);
        Path file = folder.resolve(name);
        try {
            try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
                OutputStream stream = new BufferedOutputStream(new KeptOpen(Channels.newOutputStream(channel)));
                writing.to(stream);
                stream.flush();
                channel.force(true);
            }
            readingBack.of(part);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
        force();
        return file;
    }

    /**
     * Sees whether a backup could be written here.
     *
     * @throws IOException where it could not
     */
    void tryOut() throws IOException {
        Files.delete(BACKUP.in(folder));
    }

    /** The backups here, the latest first; none where the folder cannot be read. */
    List<Kept> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .filter(file -> isName(file.getFileName().toString()))
                    .map(BackupFolder::kept)
                    .sorted(Comparator.comparing(Kept::name).reversed())
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    /** Takes the oldest away until no more than so many are left, and what a killed program left half written. */
    void keepOnly(int most, Instant now) throws IOException {
        for (Kept old : files().stream().skip(most).toList()) {
            Files.deleteIfExists(folder.resolve(old.name()));
        }
        BACKUP.sweep(folder, now);
    }

    private static Kept kept(Path file) {
        try {
            return new Kept(
                    file.getFileName().toString(),
                    Files.size(file),
                    Files.getLastModifiedTime(file).toInstant());
        } catch (IOException gone) {
            return new Kept(file.getFileName().toString(), 0, Instant.EPOCH);
        }
    }

    /** A folder is forced to the disk like a file, where the system can; some cannot open one. */
    private void force() throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    /** Closing what is written into it leaves the file open: it is still to be forced to the disk. */
    private static final class KeptOpen extends FilterOutputStream {

        KeptOpen(OutputStream stream) {
            super(stream);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }
}
