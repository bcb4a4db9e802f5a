package patinary.measure;

import static java.math.RoundingMode.HALF_UP;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formulas: standard solid geometry. The measures are invented things; their surfaces were worked by hand from them. */
class ShapeTest {

    private static final MathContext NEAR = new MathContext(20);

    @ParameterizedTest
    @CsvSource({
        "BOX_CLOSED, 10 x 7 x 5 in, 310.00",
        "BOX_OPEN, 12 x 9 x 6 in, 360.00",
        "BOX_SIDES, 12 x 9 x 6 in, 252.00",
        "BOX_OPEN, 11 x 8 x 5.5 in, 297.00",
        "CYLINDER, 8 x 9 in, 226.19",
        "DISC, 8 in, 50.27",
        "CYLINDER_OPEN, 8 x 9 in, 276.46",
        "CYLINDER_CLOSED, 8 x 9 in, 326.73",
        "FRUSTUM, 6 x 4 x 5.5 in, 87.81",
        "FRUSTUM, 10 x 7 x 9 in, 243.65",
        "FRUSTUM, 14 x 10 x 12 in, 458.63",
        "SQUARE_TAPER, 12 x 12 x 9 x 9 x 12 in, 507.92",
        "SQUARE_TAPER, 14 x 8 x 11 x 5 x 7 in, 272.04",
        "FRAME, 16 x 20 x 11 x 15 x 0.75 in, 248.00",
        "FRAME, 10 x 12 x 7 x 9 x 0.6 in, 102.60",
        "BOARD, 15 x 9 x 0.75 in, 306.00",
        "PANEL, 16 x 20 in, 320.00"
    })
    void hasTheSurfaceWorkedByHand(Shape shape, String measures, BigDecimal squareInches) {
        BigDecimal inches =
                area(shape, measures).divide(Unit.SQUARE_INCH.factor(), NEAR).setScale(2, HALF_UP);
        assertThat(inches).isEqualByComparingTo(squareInches);
    }

    /** Stacks and things of several parts are the sum of their parts. */
    @Test
    void addsUpToThingsOfSeveralParts() {
        BigDecimal lamp = sum(
                area(Shape.FRUSTUM, "4 x 7 x 5 in"),
                area(Shape.FRUSTUM, "7 x 3 x 6 in"),
                area(Shape.FRUSTUM, "3 x 2 x 2 in"),
                area(Shape.CYLINDER, "5 x 0.75 in"));
        assertThat(lamp.divide(Unit.SQUARE_INCH.factor(), NEAR)).isCloseTo(new BigDecimal("217.52"), within(cent()));
    }

    @Test
    void readsInchesAndCentimetresAlikeAndMixed() {
        assertThat(area(Shape.FRUSTUM, "25.4 cm x 17.78 x 22.86 cm"))
                .isEqualByComparingTo(area(Shape.FRUSTUM, "10 x 7 x 9 in"));
        assertThat(area(Shape.BOX_OPEN, "1 ft by 9 in x 15.24 cm"))
                .isEqualByComparingTo(area(Shape.BOX_OPEN, "12 x 9 x 6 in"));
    }

    @Test
    void saysWhyMeasuresCannotBeRead() {
        assertThat(ShapeText.read(Shape.FRUSTUM, "10 x 7 in"))
                .isEqualTo(new ShapeText.Refused("measure.error.shape", List.of(3)));
        assertThat(ShapeText.read(Shape.PANEL, "10 x 7"))
                .isEqualTo(new ShapeText.Refused("measure.error.unitMissing", List.of("10 x 7")));
        assertThat(ShapeText.read(Shape.PANEL, "10 x 7 ml")).isInstanceOf(ShapeText.Refused.class);
        assertThat(ShapeText.read(Shape.PANEL, "0 x 7 in")).isInstanceOf(ShapeText.Refused.class);
        assertThat(ShapeText.read(Shape.PANEL, "wide x 7 in")).isInstanceOf(ShapeText.Refused.class);
        assertThat(ShapeText.read(Shape.FRAME, "10 x 12 x 10 x 9 x 1 in")).isInstanceOf(ShapeText.Refused.class);
    }

    @Property
    void growsWithTheSquareOfItsMeasures(
            @ForAll Shape shape,
            @ForAll @IntRange(min = 1, max = 400) int size,
            @ForAll @IntRange(min = 2, max = 9) int k) {
        List<Quantity> once = measures(shape, size);
        List<Quantity> larger =
                once.stream().map(one -> one.times(BigDecimal.valueOf(k))).toList();
        BigDecimal expected = shape.area(once).inBase().multiply(BigDecimal.valueOf((long) k * k));
        assertThat(shape.area(larger).inBase()).isCloseTo(expected, within(new BigDecimal("0.000000000001")));
    }

    @Property
    void knowsATaperWithEqualEnds(
            @ForAll @IntRange(min = 1, max = 500) int wide,
            @ForAll @IntRange(min = 1, max = 500) int deep,
            @ForAll @IntRange(min = 1, max = 500) int high) {
        BigDecimal near = new BigDecimal("0.00000000001");
        assertThat(Shape.FRUSTUM.area(cm(wide, wide, high)).inBase())
                .isCloseTo(Shape.CYLINDER.area(cm(wide, high)).inBase(), within(near));
        assertThat(Shape.SQUARE_TAPER.area(cm(wide, deep, wide, deep, high)).inBase())
                .isCloseTo(Shape.BOX_SIDES.area(cm(wide, deep, high)).inBase(), within(near));
    }

    @Property
    void doesNotMindWhichEndOfATaperIsUp(
            @ForAll @IntRange(min = 1, max = 500) int top,
            @ForAll @IntRange(min = 1, max = 500) int base,
            @ForAll @IntRange(min = 1, max = 500) int high) {
        assertThat(Shape.FRUSTUM.area(cm(top, base, high))).isEqualTo(Shape.FRUSTUM.area(cm(base, top, high)));
    }

    @Test
    void takesLengthsAlone() {
        Quantity jar = Quantity.of("1", Unit.CUP);
        assertThatThrownBy(() -> Shape.DISC.area(List.of(jar))).isInstanceOf(WrongDimension.class);
        assertThatThrownBy(() -> Shape.DISC.area(cm(1, 2))).isInstanceOf(IllegalArgumentException.class);
    }

    private static BigDecimal area(Shape shape, String measures) {
        return ((ShapeText.Surface) ShapeText.read(shape, measures)).area();
    }

    /** Falling, so that an opening is smaller than its frame. */
    private static List<Quantity> measures(Shape shape, int size) {
        return Stream.iterate(BigDecimal.valueOf(size), one -> one.multiply(new BigDecimal("0.7")))
                .limit(shape.measures())
                .map(one -> new Quantity(one, Unit.CENTIMETRE))
                .toList();
    }

    private static List<Quantity> cm(int... lengths) {
        return java.util.Arrays.stream(lengths)
                .mapToObj(one -> new Quantity(BigDecimal.valueOf(one), Unit.CENTIMETRE))
                .toList();
    }

    private static BigDecimal sum(BigDecimal... parts) {
        return Stream.of(parts).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal cent() {
        return new BigDecimal("0.01");
    }
}
