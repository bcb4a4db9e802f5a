package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

class OfferChangeTest {

    private static final LocalDate START = LocalDate.of(2025, 3, 1);

    private final Offer.Content offer = new Offer.Content(
            START,
            "",
            "Tray",
            null,
            null,
            List.of(new Offer.OfferedPiece(new UUID(1, 1), BigDecimal.ONE)),
            List.of(new UUID(2, 2)),
            List.of(new Offer.Price(START, Amount.of(4500))),
            List.of());

    @Test
    void asksAnotherPriceFromADayAndReplacesThatOfTheSameDay() {
        Offer.Content lower =
                OfferChange.priced(offer, START.plusDays(9), Amount.of(4000)).orElseThrow();
        assertThat(OfferChange.priced(lower, START.plusDays(9), Amount.of(3900))
                        .orElseThrow()
                        .prices())
                .containsExactly(
                        new Offer.Price(START, Amount.of(4500)), new Offer.Price(START.plusDays(9), Amount.of(3900)));
        assertThat(OfferChange.priced(offer, START.minusDays(1), Amount.of(1))).isEmpty();
    }

    @Test
    void pausesAndRunsAgain() {
        Offer.Content paused = OfferChange.paused(offer, START.plusDays(5)).orElseThrow();
        assertThat(OfferChange.paused(paused, START.plusDays(6))).isEmpty();
        Offer.Content again = OfferChange.resumed(paused, START.plusDays(8)).orElseThrow();
        assertThat(again.pauses()).containsExactly(new Offer.Pause(START.plusDays(5), START.plusDays(7)));
        assertThat(OfferChange.resumed(again, START.plusDays(9))).isEmpty();
        assertThat(OfferChange.paused(again, START.plusDays(7))).isEmpty();
        assertThat(OfferChange.paused(again, START.plusDays(8))).isPresent();
    }

    @Test
    void forgetsAPauseThatLastedNoDay() {
        Offer.Content paused = OfferChange.paused(offer, START.plusDays(5)).orElseThrow();
        assertThat(OfferChange.resumed(paused, START.plusDays(5)).orElseThrow().pauses())
                .isEmpty();
    }

    @Test
    void isWithdrawnAndPutBack() {
        Offer.Content ended = OfferChange.ended(offer, START.plusDays(3)).orElseThrow();
        assertThat(ended.endedOn()).isEqualTo(START.plusDays(3));
        assertThat(OfferChange.ended(ended, null).orElseThrow()).isEqualTo(offer);
        assertThat(OfferChange.ended(offer, START.minusDays(1))).isEmpty();
    }

    /** By hand: 1 to 11 March are ten days; 6, 7 and 8 March were a pause. */
    @Test
    void countsTheDaysOnOfferWithoutPauses() {
        LocalDate sold = START.plusDays(10);
        assertThat(DaysOnOffer.count(START, sold, List.of())).isEqualTo(10);
        assertThat(DaysOnOffer.count(START, sold, List.of(new Offer.Pause(START.plusDays(5), START.plusDays(7)))))
                .isEqualTo(7);
        assertThat(DaysOnOffer.count(START, sold, List.of(new Offer.Pause(START.plusDays(5), null))))
                .isEqualTo(5);
        assertThat(DaysOnOffer.count(START, START, List.of())).isZero();
    }
}
