package patinary.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasureWordsTest {

    @ParameterizedTest
    @CsvSource({
        "es-US, use, uso",
        "es-ES, 1 use, 1 uso",
        "es-MX, 2.5 uses, 2.5 usos",
        "es-US, 1/4 sheet, 1/4 pliego",
        "es-US, 2 sheets, 2 pliegos",
        "en-US, 2 sheets, 2 sheets",
        "es-US, 2 dabs, 2 dabs",
        "es-US, large sheet, large sheet",
        "es-US, 1 large sheet, 1 large sheet",
        "es-US, 1 1/2 sheets, 1 1/2 pliegos",
        "es-US, 1 s, 1 s",
        "es-US, 3 x 4 cm, 3 x 4 cm",
        "es-US, '', ''"
    })
    void saysThemInTheLanguageOfThePage(String page, String typed, String shown) {
        assertThat(MeasureWords.shown(typed, Locale.forLanguageTag(page))).isEqualTo(shown);
    }

    /** What a Spanish page shows can be typed as it is shown. */
    @ParameterizedTest
    @CsvSource({"use", "1 use", "2.5 uses"})
    void isUnderstoodAsShown(String typed) {
        List<NamedMeasure> tool = List.of(new NamedMeasure("use", Quantity.of("0.025", Unit.EACH)));
        String shown = MeasureWords.shown(typed, Locale.forLanguageTag("es-US"));
        assertThat(shown).isNotEqualTo(typed);
        assertThat(Measures.resolve(shown, Dimension.COUNT, tool))
                .isEqualTo(Measures.resolve(typed, Dimension.COUNT, tool));
    }
}
