package patinary.web;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Lets one large file at a time be written for a device: each reads a whole shop or a whole year, and whoever presses the button
 * again because nothing seems to come would have all of it read once more (OWASP ASVS 5.0, 2.4.1). Counted in this copy of the
 * program and not in the database: a copy that dies meanwhile must not keep anybody from her data.
 */
@Component
public class Downloads {

    /** Writes the file, headers first. */
    @FunctionalInterface
    public interface Writing {

        void write() throws IOException;
    }

    private final Semaphore one = new Semaphore(1, true);
    private final Duration patience;

    Downloads(@Value("${patinary.downloads.patience:5s}") Duration patience) {
        this.patience = patience;
    }

    /**
     * Writes a file while no other is written; waits a little for one that is.
     *
     * @throws Busy where the other takes longer than that; nothing was written then
     */
    public void alone(Writing file) throws IOException {
        if (!mayBegin()) {
            throw new Busy();
        }
        try {
            file.write();
        } finally {
            one.release();
        }
    }

    private boolean mayBegin() {
        try {
            return one.tryAcquire(patience.toNanos(), TimeUnit.NANOSECONDS);
        } catch (InterruptedException ending) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
