package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** The clock, what is waited for, what was tapped and the phrases; worked by hand. */
class BenchTimerTest {

    private static final Instant NINE = Instant.parse("2025-03-02T09:00:00Z");

    @Test
    void countsWhatWasWorkedAndNotThePauses() {
        BenchTimer timer = BenchTimer.off(Instant.EPOCH)
                .go(NINE)
                .pause(minute(20))
                .go(minute(50))
                .pause(minute(65))
                .go(minute(100));
        // 20 + 15 + 10
        assertThat(timer.minutes(minute(110))).isEqualTo(45);
        assertThat(timer.started()).isEqualTo(NINE);
        assertThat(timer.asks(minute(110))).isFalse();
    }

    @Test
    void aSecondTapLosesNothing() {
        BenchTimer timer = BenchTimer.off(Instant.EPOCH).go(NINE);
        assertThat(timer.go(minute(5))).isEqualTo(timer);
        BenchTimer paused = timer.pause(minute(7));
        assertThat(paused.pause(minute(9))).isEqualTo(paused);
    }

    @Test
    void asksWhereItRanForLongerThanAnybodyWorks() {
        BenchTimer timer = BenchTimer.off(Instant.EPOCH).go(NINE);
        assertThat(timer.asks(minute(360))).isFalse();
        assertThat(timer.asks(minute(361))).isTrue();
        assertThat(timer.hours(minute(14 * 60))).isEqualTo(14);
        // Paused in the morning, it asks all the same.
        assertThat(timer.pause(minute(14 * 60)).asks(minute(15 * 60))).isTrue();
    }

    @Test
    void minutesAreRoundedHalfUpAndAnythingBegunIsOne() {
        BenchTimer timer = BenchTimer.off(Instant.EPOCH).go(NINE);
        assertThat(timer.minutes(NINE)).isZero();
        assertThat(timer.minutes(NINE.plusSeconds(1))).isEqualTo(1);
        assertThat(timer.minutes(NINE.plusSeconds(149))).isEqualTo(2);
        assertThat(timer.minutes(NINE.plusSeconds(150))).isEqualTo(3);
        assertThat(timer.minutes(NINE.minusSeconds(60))).isZero();
    }

    @Test
    void aStateThatCannotBeIsRefused() {
        assertThatThrownBy(() -> new BenchTimer(null, NINE, 0, NINE)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BenchTimer(NINE, NINE, -1, NINE)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aPhoneWhoseClockRunsAheadDoesNotOutvoteEveryLaterTap() {
        long nextYear = NINE.plusSeconds(365 * 86_400L).toEpochMilli();
        ClockSync sent = new ClockSync(new ClockSync.Timer(null, null, 0, nextYear, null), null);
        assertThat(sent.readTimer(NINE).changed()).isEqualTo(NINE);
        assertThat(sent.readWaits()).isEmpty();
    }

    @Test
    void aWaitCountsBegunMinutesInFull() {
        BenchWait wait = new BenchWait(UUID.randomUUID(), "Wipe back", NINE.plusSeconds(61), false);
        assertThat(wait.left(NINE)).isEqualTo(2);
        assertThat(wait.left(NINE.plusSeconds(61))).isZero();
        assertThat(wait.left(NINE.plusSeconds(200))).isEqualTo(-2);
    }

    @Test
    void tapsBecomeTheWordsSheWouldType() {
        assertThat(NowReading.words(tap("dab", "1"))).isEqualTo("1 dab");
        assertThat(NowReading.words(tap("dab", "3"))).isEqualTo("3 dabs");
        assertThat(NowReading.words(tap("brush", "2"))).isEqualTo("2 brush");
        assertThat(NowReading.words(tap("dab", ""))).isEqualTo("1 dab");
        assertThat(NowReading.words(tap("", "4"))).isEmpty();
    }

    @Test
    void phrasesAreWhatComesUpAgain() {
        assertThat(Phrases.of(
                        List.of(
                                "Waxed, buffed",
                                "First coat. Sanded lightly",
                                "sanded lightly; waxed",
                                "Waxed 1.5 times"),
                        3))
                .containsExactly("Waxed", "Sanded lightly", "buffed");
    }

    private static NowForm.Tap tap(String measure, String times) {
        NowForm.Tap tap = new NowForm.Tap();
        tap.measure = measure;
        tap.times = times;
        return tap;
    }

    private static Instant minute(int number) {
        return NINE.plusSeconds(number * 60L);
    }
}
