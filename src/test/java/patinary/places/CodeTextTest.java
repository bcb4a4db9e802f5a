package patinary.places;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes as hands type them and scanners read them; all invented. */
class CodeTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "P0012",
                "p0012",
                "p12",
                "12",
                "0012",
                "p-12",
                " P 00 12 ",
                "P\u201312",
                "P.12",
                "https://shop.example/p/P0012",
                "http://workroom.local:8080/shop/p/p12"
            })
    void meansTheTwelfthPiece(String typed) {
        assertThat(CodeText.meanings(typed)).contains("P0012");
    }

    /** A piece whose code is just "12" is meant before the twelfth. */
    @Test
    void whatIsWrittenComesBeforeWhatMayBeMeant() {
        assertThat(CodeText.meanings("12")).containsExactly("12", "P0012");
        assertThat(CodeText.meanings("P0012")).containsExactly("P0012");
        assertThat(CodeText.meanings("P12345678")).containsExactly("P12345678");
        assertThat(CodeText.meanings("000")).containsExactly("000", "P0000");
    }

    @ParameterizedTest
    @CsvSource({"box-a 3, BOXA3", "Ärmel.2, ÄRMEL2", "P123456789, P123456789", "P12B, P12B"})
    void herOwnCodesStayWhatTheyAre(String typed, String meant) {
        assertThat(CodeText.meanings(typed)).containsExactly(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "-", " . - ", "https://shop.example/p/"})
    void nothingMeansNothing(String typed) {
        assertThat(CodeText.meanings(typed)).isEmpty();
    }

    @Test
    void severalCodesStandOnLinesOrBetweenCommas() {
        assertThat(CodeText.split("p1, p2;P3\r\n\n  p 4 \n,")).isEqualTo(List.of("p1", "p2", "P3", "p 4"));
        assertThat(CodeText.split("  ")).isEmpty();
    }
}
