package patinary.money;

import static java.math.RoundingMode.HALF_EVEN;
import static java.math.RoundingMode.HALF_UP;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PercentTest {

    /**
     * Source: Streamlined Sales and Use Tax Agreement, section 324: carry the tax to the third decimal and round up when
     * it is greater than four. Amounts derived: 0.035 and 0.025; the second is where half even would give 2.
     */
    @Test
    void roundsSalesTaxAsAgreed() {
        assertThat(Percent.of("7").of(Amount.of(50), HALF_UP)).isEqualTo(Amount.of(4));
        assertThat(Percent.of("5").of(Amount.of(50), HALF_UP)).isEqualTo(Amount.of(3));
        assertThat(Percent.of("5").of(Amount.of(50), HALF_EVEN)).isEqualTo(Amount.of(2));
    }

    /** Derived from the same section: tax by the item and by the invoice may differ, so the base must be stored. */
    @Test
    void differsByTheBase() {
        Amount perItem = Percent.of("7").of(Amount.of(50), HALF_UP);
        assertThat(perItem.plus(perItem).plus(perItem)).isEqualTo(Amount.of(12));
        assertThat(Percent.of("7").of(Amount.of(150), HALF_UP)).isEqualTo(Amount.of(11));
    }

    @Test
    void mirrorsARefund() {
        assertThat(Percent.of("5").of(Amount.of(-50), HALF_UP)).isEqualTo(Amount.of(-3));
        assertThat(Percent.ZERO.of(Amount.of(1234), HALF_UP)).isEqualTo(Amount.ZERO);
    }

    @Test
    void knowsThePlacesThatAColumnNeeds() {
        assertThat(Percent.places(List.of(Percent.of("7.0000"), Percent.of("8.2500"), Percent.of("6.5"))))
                .isEqualTo(2);
        assertThat(Percent.places(List.of(Percent.of("10"), Percent.of("100")))).isZero();
        assertThat(Percent.places(List.of())).isZero();
    }

    @Test
    void takesFractionsOfAPercent() {
        assertThat(Percent.of("8.25").of(Amount.of(10_000), HALF_UP)).isEqualTo(Amount.of(825));
    }
}
