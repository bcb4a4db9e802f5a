package patinary.mixes;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.measure.Dimension;
import patinary.measure.MixRatio;
import patinary.measure.Quantity;
import patinary.money.Percent;
import patinary.supplies.Limits;
import patinary.supplies.Supply;

/** Worked by hand; the ratio of half as much additive as paint is common practice, no source. */
class AdditiveCheckTest {

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"15, 45, -", "15.01, 45.01, 50", "20, 50, 66.7", "10, 10, 100", "1, 100, -"})
    void moreThanTheLabelAllowsIsFound(BigDecimal additive, BigDecimal made, BigDecimal is) {
        assertThat(AdditiveCheck.of(UUID.randomUUID(), grip("50"), additive, made)
                        .map(much -> much.is().value()))
                .satisfies(found -> {
                    if (is == null) {
                        assertThat(found).isEmpty();
                    } else {
                        assertThat(found.orElseThrow()).isEqualByComparingTo(is);
                    }
                });
    }

    @Test
    void theMostIsAShareOfThePaint() {
        assertThat(AdditiveCheck.most(Percent.of("50"), new BigDecimal("14.83")))
                .isEqualByComparingTo("7.415");
    }

    /** One cup of powder and one of water make a cup and a half: for three cups, two of each. */
    @Test
    void amountsFollowFromTheRatio() {
        Recipe recipe = Recipe.of(MixRatio.COMMON, Quantity.parse("3 cups"));
        assertThat(recipe.first()).isEqualByComparingTo(Quantity.parse("2 cups").inBase());
        assertThat(recipe.second())
                .isEqualByComparingTo(Quantity.parse("2 cups").inBase());
        assertThat(recipe.makes()).isEqualByComparingTo(Quantity.parse("3 cups").inBase());
    }

    private static Supply.Facts grip(String most) {
        return new Supply.Facts(new UUID(0, 1), "Grip", Dimension.VOLUME, null, null, List.of(), List.of())
                .with(null, List.of(), new Limits(null, null, Percent.of(most), "an invented label"));
    }
}
