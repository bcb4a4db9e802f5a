package patinary.money;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceEndingsTest {

    /** By hand. */
    @ParameterizedTest
    @CsvSource({
        "'.00 .95', 1234, 1295",
        "'.00 .95', 1295, 1295",
        "'.00 .95', 1296, 1300",
        "'.00;,95', 0, 0",
        "'9.50', 1234, 1950",
        "'9.50', 1951, 2950",
        "'9.50 .00', 951, 1000",
        "'', 1234, 1234"
    })
    void aPriceGoesUpToTheNextEnding(String endings, long price, long expected) {
        assertThat(PriceEndings.parse(endings, 2).orElseThrow().upFrom(Amount.of(price)))
                .isEqualTo(Amount.of(expected));
    }

    @ParameterizedTest
    @CsvSource({"5", ".5", ".955", "x", "-.50", "1.2.3"})
    void whatIsNoEndingIsRefused(String endings) {
        assertThat(PriceEndings.parse(endings, 2)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"00, 1234, 1300", "80, 1234, 1280"})
    void aCurrencyWithoutDecimalsHasWholeEndings(String endings, long price, long expected) {
        assertThat(PriceEndings.parse(endings, 0).orElseThrow().upFrom(Amount.of(price)))
                .isEqualTo(Amount.of(expected));
        assertThat(PriceEndings.parse(".50", 0)).isEmpty();
    }
}
