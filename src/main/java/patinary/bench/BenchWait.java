package patinary.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/**
 * Something that is waited for at the bench: the next coat, wiping back.
 *
 * @param id made by the device that set it, so that it is kept once however often it is sent
 * @param words what to do then
 * @param done whether it was ticked off; once done it stays done
 */
record BenchWait(UUID id, String words, Instant due, boolean done) {

    static final int WORDS = 120;

    /** Minutes left, begun ones in full; below zero where it is due already. */
    long left(Instant now) {
        long seconds = Duration.between(now, due).toSeconds();
        return seconds > 0 ? (seconds + 59) / 60 : -(-seconds / 60);
    }
}
