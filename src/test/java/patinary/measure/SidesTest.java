package patinary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Inches by NIST's exact factor: 2.54 cm. */
class SidesTest {

    @ParameterizedTest
    @CsvSource({
        "12 x 8 in, 30.48, 20.32, 12 x 8 in",
        "30 x 60 cm, 30, 60, 30 x 60 cm",
        "4 1/2 by 5 in, 11.43, 12.7, 4.5 x 5 in",
        "140mm x 14 cm, 14, 14, 14 x 14 cm",
        "1 ft x 24 in, 30.48, 60.96, 12 x 24 in"
    })
    void sidesAreReadAndSaidAgain(String typed, BigDecimal width, BigDecimal height, String said) {
        Sides sides = Sides.parse(typed);
        assertThat(sides.width()).isEqualByComparingTo(width);
        assertThat(sides.height()).isEqualByComparingTo(height);
        assertThat(sides.typed()).isEqualTo(said);
        assertThat(Sides.parse(sides.typed()).area()).isEqualByComparingTo(sides.area());
    }

    @ParameterizedTest
    @CsvSource({"12 in", "12 x 8", "0 x 8 in", "1 cup x 2 cup", "rose"})
    void whatHasNoTwoSidesIsRefused(String typed) {
        assertThatThrownBy(() -> Sides.parse(typed)).isInstanceOf(UnreadableQuantity.class);
    }

    @Test
    void aCutMayBeTurned() {
        Sides sheet = Sides.parse("30 x 60 cm");
        assertThat(Sides.parse("50 x 20 cm").fitsIn(sheet)).isTrue();
        assertThat(Sides.parse("31 x 31 cm").fitsIn(sheet)).isFalse();
    }
}
