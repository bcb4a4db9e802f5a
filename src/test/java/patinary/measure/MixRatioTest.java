package patinary.measure;

import static java.math.MathContext.DECIMAL64;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Every figure here is common practice, no source, unless marked. */
class MixRatioTest {

    private static final Quantity CUP = Quantity.of("1", Unit.CUP);

    /** Common practice, no source: a cup of powder and a cup of water give one and a half cups. */
    @Test
    void mixesEqualVolumesToThreeQuartersOfTheirSum() {
        assertThat(MixRatio.COMMON.waterFor(CUP, DECIMAL64)).isEqualTo(CUP);
        assertThat(MixRatio.COMMON.paintFrom(CUP, DECIMAL64)).isEqualTo(Quantity.of("1.5", Unit.CUP));
        assertThat(MixRatio.COMMON.powderFor(Quantity.of("1.5", Unit.CUP), DECIMAL64))
                .isEqualTo(CUP);
        assertThat(MixRatio.COMMON.powderFor(Quantity.of("3", Unit.CUP), DECIMAL64))
                .isEqualTo(Quantity.of("2", Unit.CUP));
    }

    /** Common practice, no source: up to one and a half parts of water for thinner paint. */
    @Test
    void takesOtherRatios() {
        MixRatio thin = new MixRatio(BigDecimal.ONE, new BigDecimal("1.5"), new BigDecimal("0.75"));
        assertThat(thin.waterFor(CUP, DECIMAL64)).isEqualTo(Quantity.of("1.5", Unit.CUP));
        assertThat(thin.paintFrom(CUP, DECIMAL64)).isEqualTo(Quantity.of("1.875", Unit.CUP));
    }

    /** Common practice, no source: 14.83 mL of mixed paint takes at most 7.415 mL, a third of the 22.245 mL in all. */
    @Test
    void addsHalfAPartToTheFirstCoatOnSlickSurfaces() {
        Quantity paint = Quantity.of("14.83", Unit.MILLILITRE);
        assertThat(MixRatio.mostAdditive(paint, true, 1)).isEqualTo(Quantity.of("7.415", Unit.MILLILITRE));
        assertThat(MixRatio.mostAdditive(paint, true, 2)).isEqualTo(Quantity.of("0", Unit.MILLILITRE));
        assertThat(MixRatio.mostAdditive(paint, false, 1)).isEqualTo(Quantity.of("0", Unit.MILLILITRE));
        assertThatThrownBy(() -> MixRatio.mostAdditive(paint, true, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void mixesByVolumeOnly() {
        Quantity weighed = Quantity.of("100", Unit.GRAM);
        assertThatThrownBy(() -> MixRatio.COMMON.waterFor(weighed, DECIMAL64)).isInstanceOf(WrongDimension.class);
        assertThatThrownBy(() -> MixRatio.COMMON.paintFrom(weighed, DECIMAL64)).isInstanceOf(WrongDimension.class);
        assertThatThrownBy(() -> MixRatio.COMMON.powderFor(weighed, DECIMAL64)).isInstanceOf(WrongDimension.class);
        assertThatThrownBy(() -> MixRatio.mostAdditive(weighed, true, 1)).isInstanceOf(WrongDimension.class);
    }

    @Test
    void refusesMixesThatCannotBe() {
        BigDecimal one = BigDecimal.ONE;
        assertThatThrownBy(() -> new MixRatio(BigDecimal.ZERO, one, one)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MixRatio(one, one, new BigDecimal("1.01")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void thePowderForAPaintMakesThatPaint(@ForAll @IntRange(min = 1, max = 100_000) int millilitres) {
        Quantity powder = new Quantity(BigDecimal.valueOf(millilitres), Unit.MILLILITRE);
        Quantity paint = MixRatio.COMMON.paintFrom(powder, DECIMAL64);
        assertThat(MixRatio.COMMON.powderFor(paint, DECIMAL64)).isEqualTo(powder);
    }
}
