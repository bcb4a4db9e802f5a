package patinary.asking;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.pieces.TrueCosts;
import patinary.shop.Aims;

/** Worked by hand; common practice, no source. Figures are invented. */
class NeedsTest {

    private static final TrueCosts.Cost TRAY = cost(1180, 90, 2250, 65);
    private static final TrueCosts.Cost JUG = cost(423, 20, 500, 0);

    /** Money 11.80, hours 1.5 × 15.00 = 22.50, trip 0.65, wish 12.00: 11.80, 34.95, 46.95. */
    @Test
    void onePieceWithAWishedAmount() {
        Needs needs = Needs.of(List.of(TRAY), aims(1200, null));
        assertThat(needs.floor()).isEqualTo(Amount.of(1180));
        assertThat(needs.trueFloor()).isEqualTo(Amount.of(3495));
        assertThat(needs.target()).isEqualTo(Amount.of(4695));
    }

    /** Money 16.03, hours 27.50, trip 0.65; the wish of 12.00 for each of two: 44.18 and 68.18. */
    @Test
    void aSetIsItsPiecesTogetherAndTheWishIsForEach() {
        Needs needs = Needs.of(List.of(TRAY, JUG), aims(1200, null));
        assertThat(needs.floor()).isEqualTo(Amount.of(1603));
        assertThat(needs.trueFloor()).isEqualTo(Amount.of(4418));
        assertThat(needs.target()).isEqualTo(Amount.of(6818));
    }

    /** 33 % of 16.03 is 5.2899, rounded up to 5.29. */
    @Test
    void aShareIsOfAllTheMoneyInThemRoundedUp() {
        assertThat(Needs.of(List.of(TRAY, JUG), aims(0, "33")).wish()).isEqualTo(Amount.of(529));
    }

    private static TrueCosts.Cost cost(long landed, long minutes, long work, long trip) {
        return new TrueCosts.Cost(
                UUID.randomUUID(),
                Amount.of(landed),
                BigDecimal.valueOf(minutes),
                Amount.of(work),
                Amount.of(trip),
                false);
    }

    private static Aims aims(long target, @Nullable String share) {
        return new Aims(
                180,
                Amount.ZERO,
                Amount.of(target),
                share == null ? null : Percent.of(share),
                Percent.ZERO,
                PriceEndings.parse("", 2).orElseThrow());
    }
}
