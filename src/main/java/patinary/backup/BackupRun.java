package patinary.backup;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One backup, one that was taken to a device, or one rehearsal.
 *
 * @param file the file; empty for one that went to a device
 * @param bytes its size, null where it failed
 * @param changes how often the books had been changed by then, null where it failed
 * @param told how it went, in words
 */
record BackupRun(
        UUID id,
        What what,
        Instant startedAt,
        Instant endedAt,
        boolean good,
        String file,
        @Nullable Long bytes,
        @Nullable Long changes,
        String told) {

    enum What {
        BACKUP,
        TAKEN,
        REHEARSAL
    }

    /** The name without its folder. */
    String fileName() {
        return file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    }
}
