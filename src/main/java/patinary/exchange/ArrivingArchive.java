package patinary.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Semaphore;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.util.unit.DataSize;
import org.springframework.web.multipart.MultipartException;
import patinary.durable.HalfWritten;

/**
 * Keeps an archive that a browser sends, in the data folder, for as long as it is being taken in. One at a time, up to a size, and never
 * so much that no room is left on the disk, which the shop itself may stand on.
 */
@Component
class ArrivingArchive {

    /** What is done with the archive once it is there. */
    @FunctionalInterface
    interface Taking {

        void in(Path archive) throws IOException;
    }

    /** How much a folder has room for. */
    @FunctionalInterface
    interface Room {

        long in(Path folder) throws IOException;
    }

    static final String FOLDER = "arriving";

    /** What stays free for the shop itself; our choice. */
    static final long LEFT_FREE = 256L * 1024 * 1024;

    private static final HalfWritten ARCHIVE = new HalfWritten(".shop-archive-");
    private static final int AT_ONCE = 64 * 1024;

    /** How many bytes come between one look at the room and the next. */
    private static final long STEP = 16L * 1024 * 1024;

    private final Semaphore one = new Semaphore(1);
    private final Path folder;
    private final DataSize most;
    private final Clock clock;
    private final Room room;

    @Autowired
    ArrivingArchive(
            @Value("${patinary.archive.most:2GB}") DataSize most,
            @Value("${patinary.data:./data}") Path data,
            Clock clock) {
        this(most, data, clock, folder -> Files.getFileStore(folder).getUsableSpace());
    }

    ArrivingArchive(DataSize most, Path data, Clock clock, Room room) {
        this.most = most;
        this.folder = data.resolve(FOLDER);
        this.clock = clock;
        this.room = room;
    }

    /** The largest archive that is taken. */
    DataSize most() {
        return most;
    }

    /**
     * Stores what comes, hands it on and takes it away again.
     *
     * @param said how many bytes were announced; below zero where none were
     * @throws ArchiveRefused where it is too large, there is no room, or another one is coming in
     */
    void take(InputStream coming, long said, Taking taking) throws IOException {
        if (!one.tryAcquire()) {
            throw refused("arriving-other");
        }
        try {
            Files.createDirectories(folder);
            ARCHIVE.sweep(folder, clock.instant());
            refuseWithoutRoom(said);
            Path kept = ARCHIVE.in(folder);
            try {
                keep(coming, kept);
                taking.in(kept);
            } finally {
                Files.deleteIfExists(kept);
            }
        } finally {
            one.release();
        }
    }

    private void keep(InputStream coming, Path kept) throws IOException {
        try (OutputStream file = Files.newOutputStream(kept)) {
            byte[] bytes = new byte[AT_ONCE];
            long taken = 0;
            long looked = 0;
            for (int got = read(coming, bytes); got >= 0; got = read(coming, bytes)) {
                taken += got;
                if (taken > most.toBytes()) {
                    throw tooLarge();
                }
                if (taken - looked > STEP) {
                    refuseWithoutRoom(0);
                    looked = taken;
                }
                write(file, bytes, got);
            }
        }
    }

    private void refuseWithoutRoom(long said) throws IOException {
        // The form around the file is announced with it, and is small.
        if (said - STEP > most.toBytes()) {
            throw tooLarge();
        }
        if (room.in(folder) - Math.max(0, said) < LEFT_FREE) {
            throw refused("arriving-room");
        }
    }

    private static int read(InputStream coming, byte[] bytes) {
        try {
            return coming.read(bytes);
        } catch (IOException broken) {
            throw new MultipartException("The archive broke off", broken);
        }
    }

    private static void write(OutputStream file, byte[] bytes, int length) {
        try {
            file.write(bytes, 0, length);
        } catch (IOException full) {
            throw refused("arriving-room");
        }
    }

    private ArchiveRefused tooLarge() {
        return new ArchiveRefused(ArchiveError.ofFile("", "arriving-size", words(most)));
    }

    private static ArchiveRefused refused(String reason) {
        return new ArchiveRefused(ArchiveError.ofFile("", reason));
    }

    /** A size as it is set, in the largest unit in which it is whole. */
    static String words(DataSize size) {
        String[] units = {"bytes", "KB", "MB", "GB", "TB"};
        long shown = size.toBytes();
        int unit = 0;
        while (unit < units.length - 1 && shown > 0 && shown % 1024 == 0) {
            shown /= 1024;
            unit++;
        }
        return shown + " " + units[unit];
    }
}
