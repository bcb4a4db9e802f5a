package patinary.counting;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import patinary.measure.Dimension;
import patinary.supplies.Weighing;

class WeighingTest {

    private static final Weighing JAR = new Weighing(new BigDecimal("85"), new BigDecimal("1.25"));

    /** 210 g in all, the jar 85 g: 125 g, at 1.25 g per ml 100 ml. */
    @Test
    void theEmptyJarIsTakenOffAndTheRestDividedByTheDensity() {
        assertThat(JAR.content(new BigDecimal("210"), Dimension.VOLUME).orElseThrow())
                .isEqualByComparingTo("100");
        assertThat(JAR.content(new BigDecimal("210"), Dimension.MASS).orElseThrow())
                .isEqualByComparingTo("125");
    }

    @Test
    void whatIsLighterThanTheJarOrNotByWeightTellsNothing() {
        assertThat(JAR.content(new BigDecimal("84"), Dimension.VOLUME)).isEmpty();
        assertThat(JAR.content(new BigDecimal("210"), Dimension.AREA)).isEmpty();
        assertThat(new Weighing(new BigDecimal("85"), null).content(new BigDecimal("210"), Dimension.VOLUME))
                .isEmpty();
        assertThat(Weighing.UNKNOWN.content(new BigDecimal("210"), Dimension.MASS))
                .isEmpty();
    }
}
