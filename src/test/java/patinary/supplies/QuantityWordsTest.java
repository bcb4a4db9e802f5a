package patinary.supplies;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.measure.Dimension;
import patinary.measure.Measures;

/** Factors: NIST Handbook 44, Appendix C, as in docs/handbook/units.md. */
class QuantityWordsTest {

    @ParameterizedTest
    @CsvSource({
        "60, VOLUME, 60 ml",
        "236.5882365, VOLUME, 8 fl oz",
        "59.147059125, VOLUME, 2 fl oz",
        "4.92892159375, VOLUME, 1 tsp",
        "2500, VOLUME, 2.5 l",
        "929.0304, AREA, 1 sq ft",
        "619.3536, AREA, 96 sq in",
        "91.44, LENGTH, 91.44 cm",
        "30.48, LENGTH, 30.48 cm",
        "453.59237, MASS, 16 oz",
        "25, COUNT, 25",
        "0, VOLUME, 0 ml"
    })
    void areTypedAsTheyWereMeasured(BigDecimal base, Dimension dimension, String text) {
        assertThat(QuantityWords.typed(base, dimension)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "236.5882365, VOLUME",
        "78.862745499999, VOLUME",
        "123.456789123, AREA",
        "7.5, COUNT",
        "28.349523125, MASS",
        "12345.678, LENGTH"
    })
    void canBeTypedAgain(BigDecimal base, Dimension dimension) {
        Measures.Resolved again =
                (Measures.Resolved) Measures.resolve(QuantityWords.typed(base, dimension), dimension, List.of());
        assertThat(again.quantity().inBase())
                .isCloseTo(base, org.assertj.core.data.Offset.offset(new BigDecimal("1e-9")));
    }

    @ParameterizedTest
    @CsvSource({"186.5882365, VOLUME, 186.6", "0.123456, VOLUME, 0.12", "-50, VOLUME, -50"})
    void areRoundedForReadingWhereNoUnitFits(BigDecimal base, Dimension dimension, BigDecimal number) {
        assertThat(QuantityWords.say(base, dimension).number()).isEqualByComparingTo(number);
    }
}
