package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** From when the time of a piece counts, worked by hand from the definition in docs/handbook/what-to-pay.md. */
class OutcomeTest {

    private static final LocalDate EARLY = LocalDate.of(2025, 3, 1);
    private static final LocalDate MIDDLE = LocalDate.of(2025, 5, 1);
    private static final LocalDate LATE = LocalDate.of(2025, 8, 1);
    private static final PayRow.Group TRAY = new PayRow.Group(new UUID(1, 1), "Tray", new UUID(2, 1), "Folk");
    private static final PayRow.Group BOX = new PayRow.Group(new UUID(1, 2), "Box", new UUID(2, 1), "Folk");

    @Test
    void theClockBeginsWithTheFirstOffer() {
        assertThat(days(EARLY, null, null, null).clockFrom()).isEqualTo(EARLY);
        assertThat(days(EARLY, LATE, null, null).clockFrom()).isEqualTo(EARLY);
    }

    @Test
    void aSaleImpliesAnOfferOfThatDay() {
        assertThat(days(null, LATE, null, null).clockFrom()).isEqualTo(LATE);
        assertThat(days(LATE, EARLY, null, null).clockFrom()).isEqualTo(EARLY);
    }

    @Test
    void whatWasLetGoUnofferedHadItsTimeAndWhatWaitsHasNone() {
        assertThat(days(null, null, null, LATE).clockFrom()).isEqualTo(LATE);
        assertThat(days(null, null, null, null).clockFrom()).isNull();
    }

    @Test
    void whatWasOnOfferBeforeTheBooksTellsNothing() {
        assertThat(days(EARLY, LATE, MIDDLE, null).clockFrom()).isNull();
        assertThat(days(MIDDLE, null, MIDDLE, null).clockFrom()).isNull();
        assertThat(days(LATE, null, MIDDLE, null).clockFrom()).isEqualTo(LATE);
    }

    @Test
    void workBeforeTheBooksIsNotInThem() {
        assertThat(of(days(LATE, null, MIDDLE, null)).worked()).isFalse();
        assertThat(of(days(LATE, null, null, null)).worked()).isTrue();
    }

    @Test
    void theLastSoldStandFirstAndWhatWaitsByItsOffer() {
        Outcome soldEarly = of(days(EARLY, MIDDLE, null, null));
        Outcome soldLate = of(days(EARLY, LATE, null, null));
        Outcome waitsLong = of(days(EARLY, null, null, null));
        Outcome waits = of(days(MIDDLE, null, null, null));
        Outcome never = of(days(null, null, null, null));
        assertThat(Stream.of(never, waitsLong, soldEarly, waits, soldLate).sorted(Outcome.LATEST))
                .isEqualTo(List.of(soldLate, soldEarly, waits, waitsLong, never));
    }

    @Test
    void aGroupHoldsWhatItsLevelTellsApart() {
        assertThat(Together.BOTH.holds(TRAY, BOX)).isFalse();
        assertThat(Together.STYLE.holds(TRAY.styleOnly(), BOX)).isTrue();
        assertThat(Together.KIND.holds(TRAY.kindOnly(), BOX)).isFalse();
        assertThat(Together.ANY.holds(PayRow.Group.WHOLE, BOX)).isTrue();
        assertThat(Together.ANY.holds(TRAY.kindOnly(), TRAY)).isTrue();
        assertThat(Together.BOTH.holds(PayRow.Group.WHOLE, BOX)).isFalse();
    }

    private static Outcome.Days days(
            @Nullable LocalDate offered,
            @Nullable LocalDate sold,
            @Nullable LocalDate taken,
            @Nullable LocalDate letGo) {
        return new Outcome.Days(offered, sold, taken, letGo);
    }

    private static Outcome of(Outcome.Days days) {
        return Outcome.of(
                UUID.randomUUID(), TRAY, days, null, Amount.ZERO, Amount.ZERO, BigDecimal.ZERO, Amount.ZERO, true);
    }
}
