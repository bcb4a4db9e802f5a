package patinary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Rates: common practice, no source (a quart of brushed paint for 120 square feet is 7.886 ml for one). */
class CoverageTest {

    private static final BigDecimal FOOT = Unit.SQUARE_FOOT.factor();

    /** A planter of 243.647 square inches, two coats at 7.886 ml: 1.6920 × 2 × 7.886 = 26.69 ml, worked by hand. */
    @Test
    void coversATaperedPlanter() {
        BigDecimal area = ((ShapeText.Surface) ShapeText.read(Shape.FRUSTUM, "10 x 7 x 9 in")).area();
        Coverage paint = new Coverage(new BigDecimal("15.772"), FOOT);
        assertThat(paint.forPiece(area).orElseThrow().setScale(2, RoundingMode.HALF_UP))
                .isEqualTo("26.69");
        Coverage wax = new Coverage(Unit.OUNCE.factor(), FOOT.multiply(BigDecimal.TEN));
        assertThat(wax.forPiece(area).orElseThrow().setScale(2, RoundingMode.HALF_UP))
                .isEqualTo("4.80");
    }

    @Test
    void saysNothingOfAnUnknownSurface() {
        assertThat(new Coverage(BigDecimal.ONE, FOOT).forPiece(null)).isEmpty();
        assertThat(new Coverage(BigDecimal.ONE, null).forPiece(null))
                .hasValueSatisfying(quantity -> assertThat(quantity).isEqualByComparingTo("1"));
    }

    @Test
    void coversSomething() {
        assertThatThrownBy(() -> new Coverage(BigDecimal.ZERO, null)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Coverage(BigDecimal.ONE, BigDecimal.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void takesTheWholeQuantityForTheWholeSurface(
            @ForAll @IntRange(min = 1) int quantity, @ForAll @IntRange(min = 1) int area) {
        BigDecimal much = BigDecimal.valueOf(quantity);
        assertThat(new Coverage(much, BigDecimal.valueOf(area))
                        .forPiece(BigDecimal.valueOf(area))
                        .orElseThrow())
                .isEqualByComparingTo(much);
    }
}
