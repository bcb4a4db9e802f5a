package patinary.insight;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.shop.Aims;

/** docs/handbook/what-to-pay.md, tried on an invented past. */
class PayTrialTest {

    private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);
    private static final LocalDate TODAY = LocalDate.of(2025, 6, 1);
    private static final PayRow.Group TRAY = new PayRow.Group(new UUID(1, 1), "Tray", new UUID(2, 1), "Cottage");

    private final List<Outcome> pieces = new ArrayList<>();

    /**
     * By hand. Horizon 100 days; from 1 January 2024 to 21 February 2025 are 417 days, so the cut is 208 days on, 27 July 2024. Ten trays
     * before it: all sold in 20 days and left 30.00; a group alone has 10.5 of 11, 95.45 %, so 28.64 less 60 minutes at 12.00 and 3.00: 13.64. After it
     * six: five that cost 10.00 sold as before and left 8.00 each; one that cost 20.00 did not sell, brought nothing, and left −32.00.
     */
    @Test
    void theTrialByHand() {
        tenBefore();
        for (int i = 0; i < 5; i++) {
            past(LocalDate.of(2024, 9, 1).plusDays(i), 20, 1000);
        }
        past(LocalDate.of(2024, 10, 1), null, 2000);
        past(LocalDate.of(2025, 5, 1), 2, 1);
        PayTrial trial = trial().orElseThrow();
        assertThat(trial.cut()).isEqualTo(LocalDate.of(2024, 7, 27));
        assertThat(trial.within())
                .returns(5, PayTrial.Side::pieces)
                .returns(Amount.of(800), PayTrial.Side::kept)
                .returns(5, PayTrial.Side::reached);
        assertThat(trial.above())
                .returns(1, PayTrial.Side::pieces)
                .returns(Amount.of(-3200), PayTrial.Side::kept)
                .returns(0, PayTrial.Side::reached);
        assertThat(trial.expected()).isEqualTo(Amount.of(2864));
        assertThat(trial.brought()).isEqualTo(Amount.of(2500));
        // Five times 30.00 and once nothing: the standard error of the mean is 5.00.
        assertThat(trial.half()).isEqualTo(Amount.of(980));
        assertThat(trial.asExpected()).isTrue();
    }

    /** A sale after the cut is not known on that day, however soon it came for what was offered before. */
    @Test
    void nothingOfLaterSalesIsKnown() {
        for (int i = 0; i < 10; i++) {
            past(FIRST.plusDays(i), 300, 1000);
        }
        for (int i = 0; i < 6; i++) {
            past(LocalDate.of(2024, 9, 1).plusDays(i), 20, 1000);
        }
        assertThat(trial()).as("none had sold by then").isEmpty();
    }

    @Test
    void fewAreNoTrial() {
        assertThat(trial()).isEmpty();
        tenBefore();
        past(LocalDate.of(2024, 9, 1), 20, 1000);
        assertThat(trial()).isEmpty();
    }

    private void tenBefore() {
        for (int i = 0; i < 10; i++) {
            past(FIRST.plusDays(i), 20, 1000);
        }
    }

    private java.util.Optional<PayTrial> trial() {
        Aims aims = new Aims(
                100,
                Amount.ZERO,
                Amount.of(300),
                null,
                Percent.ZERO,
                PriceEndings.parse("", 2).orElseThrow());
        return PayTrial.of(pieces, aims, Amount.of(1200), TODAY);
    }

    private void past(LocalDate from, Integer days, long bought) {
        pieces.add(new Outcome(
                UUID.randomUUID(),
                TRAY,
                from,
                days == null ? null : from.plusDays(days),
                days == null ? null : Amount.of(3000),
                Amount.ZERO,
                Amount.ZERO,
                BigDecimal.valueOf(60),
                Amount.of(bought),
                true));
    }
}
