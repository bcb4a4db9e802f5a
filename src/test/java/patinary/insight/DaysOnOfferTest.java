package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Common practice, no source: days are counted from the first day on offer to the day of the sale. Dates are invented. */
class DaysOnOfferTest {

    private static final LocalDate LONG_AGO = LocalDate.MIN;

    @Test
    void countsFromTheOfferToTheDayBeforeTheSale() {
        assertThat(days(List.of(span(1, 0)), List.of(), 11)).contains(10);
        assertThat(days(List.of(span(11, 0)), List.of(), 11)).contains(0);
    }

    @Test
    void leavesPausesOut() {
        assertThat(days(List.of(span(1, 0)), List.of(span(3, 6)), 11)).contains(7);
        assertThat(days(List.of(span(1, 0)), List.of(span(3, 0)), 11)).contains(2);
    }

    @Test
    void leavesOutTheTimeBetweenTwoOffersAndCountsNoDayTwice() {
        assertThat(days(List.of(span(1, 4), span(8, 0)), List.of(), 11)).contains(6);
        assertThat(days(List.of(span(1, 6), span(4, 0)), List.of(), 11)).contains(10);
    }

    @Test
    void beginsAgainAfterASaleThatCameBack() {
        assertThat(DaysOnOffer.until(List.of(span(1, 5), span(9, 0)), List.of(), day(5), day(11)))
                .contains(2);
    }

    @Test
    void areNotKnownWithoutAnOffer() {
        assertThat(days(List.of(), List.of(), 11)).isEmpty();
        assertThat(days(List.of(span(12, 0)), List.of(), 11)).isEmpty();
    }

    private static java.util.Optional<Integer> days(List<Span> offers, List<Span> pauses, int sold) {
        return DaysOnOffer.until(offers, pauses, LONG_AGO, day(sold));
    }

    private static Span span(int from, int until) {
        return new Span(day(from), until == 0 ? null : day(until));
    }

    private static LocalDate day(int day) {
        return LocalDate.of(2025, 3, day);
    }
}
