package patinary.bench;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import patinary.finishes.Finish;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** The clock and the waits as the bench page shows them and as its buttons work without script. */
@Service
class NowClock {

    private static final String TIME = "HH:mm";
    private static final String DAY_AND_TIME = "d MMM, HH:mm";
    private static final Duration SOON = Duration.ofHours(12);
    private static final int WEEK = 7 * 24 * 60;

    private final BenchClock clock;
    private final CurrentShop shop;
    private final Clock time;

    NowClock(BenchClock clock, CurrentShop shop, Clock time) {
        this.clock = clock;
        this.shop = shop;
        this.time = time;
    }

    /**
     * The clock as shown.
     *
     * @param startedAt in words
     * @param hours worked, where it asks
     * @param raw the state as the script reads it
     */
    record View(
            boolean on, boolean running, int minutes, boolean asks, int hours, String startedAt, ClockSync.Timer raw) {

        static View off() {
            return new View(false, false, 0, false, 0, "", new ClockSync.Timer(null, null, 0, 0, List.of()));
        }
    }

    /** A wait as shown; {@code left} is below one where it is due. */
    record WaitView(UUID id, String words, String at, long left, long due) {}

    /** The clock as it is kept, to be read once for a page. */
    BenchClock.State state(String person) {
        return clock.of(person);
    }

    View view(BenchClock.State state, Instant now) {
        BenchTimer timer = state.timer();
        ClockSync.Timer raw = ClockSync.of(state, List.of()).timer();
        return new View(
                timer.isOn(),
                timer.isRunning(),
                timer.minutes(now),
                timer.asks(now),
                timer.hours(now),
                said(timer.started(), now),
                raw == null ? View.off().raw() : raw);
    }

    List<WaitView> waits(String person, Instant now) {
        return clock.waits(person).stream()
                .map(wait -> new WaitView(
                        wait.id(),
                        wait.words(),
                        said(wait.due(), now),
                        wait.left(now),
                        wait.due().toEpochMilli()))
                .toList();
    }

    static List<UUID> pieces(BenchClock.State state) {
        return state.timer().isOn() ? state.pieces() : List.of();
    }

    void go(String person, NowForm form) {
        clock.keep(person, clock.of(person).timer().go(time.instant()), ChosenIds.read(form.pieces));
    }

    void pause(String person, NowForm form) {
        clock.keep(person, clock.of(person).timer().pause(time.instant()), ChosenIds.read(form.pieces));
    }

    /** Takes the clock's minutes into the form, on top of what is there; where they are too many to be true, asks. */
    void stop(String person, NowForm form, Answers answers) {
        Instant now = time.instant();
        BenchTimer timer = clock.of(person).timer();
        if (!timer.isOn()) {
            return;
        }
        if (timer.asks(now)) {
            asks(timer, now, answers);
        } else {
            Optional<Integer> typed = answers.whole("minutes", form.minutes);
            if (answers.anyWrong()) {
                return;
            }
            form.minutes = Integer.toString(typed.orElse(0) + timer.minutes(now));
        }
        off(person);
    }

    /**
     * The minutes of an entry that is about to be kept: the typed ones, else those of a clock that is still on. The clock
     * goes on; it is switched off once the entry is kept, so that an entry refused for another reason loses no time.
     */
    String minutes(String person, String typed, Answers answers) {
        Instant now = time.instant();
        BenchTimer timer = clock.of(person).timer();
        if (!typed.isBlank() || !timer.isOn()) {
            return typed;
        }
        if (timer.asks(now)) {
            asks(timer, now, answers);
            return typed;
        }
        return Integer.toString(timer.minutes(now));
    }

    private static void asks(BenchTimer timer, Instant now, Answers answers) {
        answers.wrong("minutes", "bench.now.error.ran", timer.hours(now));
    }

    void off(String person) {
        if (clock.of(person).timer().isOn()) {
            clock.keep(person, BenchTimer.off(time.instant()), List.of());
        }
    }

    void waitFor(String person, NowForm form, Answers answers) {
        int minutes = answers.whole("waitMinutes", form.waitMinutes).orElse(0);
        String words = answers.note("waitWords", form.waitWords, BenchWait.WORDS);
        if (!answers.anyWrong() && (minutes < 1 || minutes > WEEK)) {
            answers.wrong("waitMinutes", "bench.now.error.wait");
        }
        if (answers.anyWrong()) {
            return;
        }
        Instant now = time.instant();
        Instant due = now.plus(Duration.ofMinutes(minutes));
        clock.keep(person, List.of(new BenchWait(UUID.randomUUID(), words, due, false)), now);
        form.waitMinutes = "";
        form.waitWords = "";
    }

    /** Starts the wait of a step; nothing happens where it has none. */
    void waitAfter(String person, Finish.Step step) {
        Finish.Wait wait = step.pause();
        if (wait != null) {
            Instant now = time.instant();
            Instant due = now.plus(Duration.ofMinutes(wait.from()));
            String words = NowRows.FinishStep.waiting(step);
            clock.keep(person, List.of(new BenchWait(UUID.randomUUID(), words, due, false)), now);
        }
    }

    void done(String person, UUID wait) {
        Instant now = time.instant();
        List<BenchWait> found = clock.waits(person).stream()
                .filter(one -> one.id().equals(wait))
                .map(one -> new BenchWait(one.id(), one.words(), one.due(), true))
                .toList();
        clock.keep(person, found, now);
    }

    private String said(@Nullable Instant moment, Instant now) {
        if (moment == null) {
            return "";
        }
        boolean soon = Duration.between(now, moment).abs().compareTo(SOON) < 0;
        return DateTimeFormatter.ofPattern(soon ? TIME : DAY_AND_TIME, shop.locale())
                .format(moment.atZone(shop.zone()));
    }
}
