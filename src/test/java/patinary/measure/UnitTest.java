package patinary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {

    /**
     * Exact values. Sources: NIST Handbook 44, Appendix C, and a table compiled from it (pint, fluid ounce, cup, ounce,
     * pound); litre, kilogram, metre and millimetre are metric prefixes.
     */
    @ParameterizedTest
    @CsvSource({
        "gallon, 3785.411784",
        "quart, 946.352946",
        "pint, 473.176473",
        "cup, 236.5882365",
        "floz, 29.5735295625",
        "tbsp, 14.78676478125",
        "tsp, 4.92892159375",
        "oz, 28.349523125",
        "lb, 453.59237",
        "in, 2.54",
        "ft, 30.48",
        "yd, 91.44",
        "in2, 6.4516",
        "ft2, 929.0304",
        "yd2, 8361.2736",
        "l, 1000",
        "kg, 1000",
        "m, 100",
        "mm, 0.1",
        "m2, 10000"
    })
    void hasNistsExactFactor(String code, BigDecimal factor) {
        assertThat(Quantity.of("1", Unit.ofCode(code)).inBase()).isEqualByComparingTo(factor);
    }

    /** The definitions themselves. Source: NIST Handbook 44, Appendix C: 231 in³ to the gallon, 2.54 cm to the inch. */
    @Test
    void followsFromTheDefinitions() {
        BigDecimal inch = Unit.INCH.factor();
        assertThat(inch.pow(3).multiply(BigDecimal.valueOf(231))).isEqualByComparingTo(Unit.GALLON.factor());
        assertThat(inch.pow(2)).isEqualByComparingTo(Unit.SQUARE_INCH.factor());
        assertThat(Unit.FOOT.factor().pow(2)).isEqualByComparingTo(Unit.SQUARE_FOOT.factor());
        assertThat(Unit.YARD.factor().pow(2)).isEqualByComparingTo(Unit.SQUARE_YARD.factor());
    }

    /** Sources: ratios of NIST SP 430's kitchen table, marked exact there; areas derived from 1 yd = 3 ft = 36 in. */
    @ParameterizedTest
    @CsvSource({
        "quart, cup, 4",
        "gallon, quart, 4",
        "gallon, pint, 8",
        "gallon, tsp, 768",
        "cup, floz, 8",
        "floz, tbsp, 2",
        "floz, tsp, 6",
        "lb, oz, 16",
        "yd, ft, 3",
        "ft, in, 12",
        "yd2, ft2, 9",
        "yd2, in2, 1296",
        "ft2, in2, 144",
        "m2, cm2, 10000"
    })
    void hasExactRatios(String from, String to, BigDecimal ratio) {
        assertThat(Quantity.of("1", Unit.ofCode(from))
                        .to(Unit.ofCode(to), MathContext.UNLIMITED)
                        .value())
                .isEqualByComparingTo(ratio);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void comesBackFromItsCodeAndIsReadAsAWord(Unit unit) {
        assertThat(Unit.ofCode(unit.code())).isEqualTo(unit);
        assertThat(UnitWords.find(unit.code())).contains(unit);
        assertThat(Unit.base(unit.dimension()).dimension()).isEqualTo(unit.dimension());
        assertThat(Unit.base(unit.dimension()).factor()).isEqualByComparingTo("1");
    }

    @Test
    void refusesAnUnknownCode() {
        assertThat(Unit.withCode("hogshead")).isEmpty();
        assertThatThrownBy(() -> Unit.ofCode("ML")).isInstanceOf(IllegalArgumentException.class);
    }
}
