package patinary.photos;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import patinary.jobs.Leases;

/**
 * Throws away, once a day, photos that were taken away long ago and files that no row names. A file is given time: its
 * row is written after it.
 */
@Component
@EnableScheduling
@ConditionalOnWebApplication
class PhotoSweep {

    /** How long a photo that was taken away can be brought back. */
    static final Duration KEPT_AWAY = Duration.ofDays(30);

    /** How long a file without a row is left alone. */
    static final Duration GRACE = Duration.ofDays(1);

    private static final Logger LOG = LoggerFactory.getLogger(PhotoSweep.class);

    private final PhotoRows rows;
    private final PhotoFolder folder;
    private final Clock clock;
    private final Leases leases;

    PhotoSweep(PhotoRows rows, PhotoFolder folder, Clock clock, Leases leases) {
        this.rows = rows;
        this.folder = folder;
        this.clock = clock;
        this.leases = leases;
    }

    /** Copies of the program share one folder; one of them sweeps it. */
    @Scheduled(initialDelayString = "${patinary.photos.first-sweep:PT10M}", fixedDelayString = "P1D")
    void onceADay() throws IOException {
        leases.once("photo-sweep", Duration.ofHours(23), Duration.ofHours(6), this::sweep);
    }

    /** @return how many files were thrown away */
    int sweep() throws IOException {
        Instant old = clock.instant().minus(GRACE);
        int thrown = 0;
        for (String name : folder.names(old)) {
            if (!rows.knows(name) && folder.takeAway(name, old)) {
                thrown++;
            }
        }
        folder.tidy(old);
        // Their files go at the next sweep: a backup that began before still finds them.
        rows.forget(clock.instant().minus(KEPT_AWAY));
        if (thrown > 0) {
            LOG.info("Threw away {} photo files that nothing names", thrown);
        }
        return thrown;
    }
}
