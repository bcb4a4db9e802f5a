package patinary.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Clock and waits as a phone sends them and gets them back; moments are milliseconds since 1970.
 *
 * @param timer the clock, or null where the phone has never tapped it
 */
record ClockSync(@Nullable Timer timer, @Nullable List<Wait> waits) {

    /** More than anybody has on a bench; a request that brings more is damaged. */
    private static final int MOST = 50;

    private static final Duration AHEAD = Duration.ofDays(1);

    record Timer(
            @Nullable Long started,
            @Nullable Long since,
            long worked,
            long changed,
            @Nullable List<UUID> pieces) {}

    record Wait(UUID id, String words, long due, boolean done) {}

    static ClockSync of(BenchClock.State state, List<BenchWait> waits) {
        BenchTimer timer = state.timer();
        return new ClockSync(
                new Timer(
                        millis(timer.started()),
                        millis(timer.since()),
                        timer.worked(),
                        timer.changed().toEpochMilli(),
                        state.pieces()),
                waits.stream()
                        .map(wait ->
                                new Wait(wait.id(), wait.words(), wait.due().toEpochMilli(), wait.done()))
                        .toList());
    }

    /** @throws IllegalArgumentException where it is no possible state */
    BenchTimer readTimer(Instant now) {
        Timer sent = timer;
        if (sent == null || pieces().size() > MOST) {
            throw new IllegalArgumentException("No clock, or too many pieces");
        }
        // A phone whose clock runs ahead must not outvote every later tap.
        Instant changed = Instant.ofEpochMilli(sent.changed());
        Instant latest = now.plus(AHEAD);
        return new BenchTimer(
                moment(sent.started()), moment(sent.since()), sent.worked(), changed.isAfter(latest) ? now : changed);
    }

    List<UUID> pieces() {
        return timer == null || timer.pieces() == null ? List.of() : timer.pieces();
    }

    /** @throws IllegalArgumentException where one is damaged */
    List<BenchWait> readWaits() {
        List<Wait> sent = waits == null ? List.of() : waits;
        if (sent.size() > MOST) {
            throw new IllegalArgumentException("Too many waits");
        }
        return sent.stream().map(ClockSync::read).toList();
    }

    private static BenchWait read(Wait sent) {
        if (sent.id() == null || sent.words() == null || sent.words().length() > BenchWait.WORDS) {
            throw new IllegalArgumentException("A damaged wait");
        }
        return new BenchWait(sent.id(), sent.words().strip(), Instant.ofEpochMilli(sent.due()), sent.done());
    }

    private static @Nullable Long millis(@Nullable Instant instant) {
        return instant == null ? null : instant.toEpochMilli();
    }

    private static @Nullable Instant moment(@Nullable Long millis) {
        return millis == null ? null : Instant.ofEpochMilli(millis);
    }
}
