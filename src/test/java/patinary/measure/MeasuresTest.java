package patinary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuresTest {

    private static final List<NamedMeasure> OWN = List.of(
            new NamedMeasure("dab", Quantity.of("2", Unit.MILLILITRE)),
            new NamedMeasure("brush load", Quantity.of("1", Unit.TEASPOON)),
            new NamedMeasure("strip", Quantity.of("24", Unit.SQUARE_INCH)));

    @ParameterizedTest
    @CsvSource({
        "dab, VOLUME, 2",
        "1 dab, VOLUME, 2",
        "3 dabs, VOLUME, 6",
        "1/2 Dab, VOLUME, 1",
        "2 brush loads, VOLUME, 9.8578431875",
        "strip, AREA, 154.8384",
        "1 cup, VOLUME, 236.5882365",
        "12 x 12 in, AREA, 929.0304",
        "4, COUNT, 4",
        "2 oz, MASS, 56.69904625"
    })
    void givesTheBaseQuantity(String text, Dimension dimension, String base) {
        assertThat(Measures.resolve(text, dimension, OWN))
                .isEqualTo(new Measures.Resolved(Quantity.of(base, Unit.base(dimension))));
    }

    @Test
    void saysThatACupMeasuresVolume() {
        assertThat(Measures.resolve("1 cup", Dimension.AREA, OWN))
                .isEqualTo(new Measures.Refused(
                        "measure.error.wrongDimension",
                        List.of("measure.unit.cup", "measure.dimension.volume", "measure.dimension.area")));
    }

    @ParameterizedTest
    @CsvSource({
        "dab, AREA, wrongDimension",
        "12, VOLUME, unitMissing",
        "3 dollops, VOLUME, unit",
        "'', VOLUME, missing",
        "1/0 dab, VOLUME, zeroDenominator",
        "'1,250 ml', VOLUME, ambiguous",
        "2 oz, VOLUME, wrongDimension"
    })
    void refusesTheRestWithAReason(String text, Dimension dimension, String reason) {
        assertThat(Measures.resolve(text, dimension, OWN))
                .isInstanceOfSatisfying(
                        Measures.Refused.class,
                        refused -> assertThat(refused.messageKey()).isEqualTo("measure.error." + reason));
    }

    @Test
    void takesTheMeasureThatFitsTheSupply() {
        List<NamedMeasure> two = List.of(
                new NamedMeasure("patch", Quantity.of("1", Unit.GRAM)),
                new NamedMeasure("patch", Quantity.of("9", Unit.SQUARE_CENTIMETRE)));
        assertThat(Measures.resolve("patch", Dimension.AREA, two))
                .isEqualTo(new Measures.Resolved(Quantity.of("9", Unit.SQUARE_CENTIMETRE)));
    }

    /** The words of tools and sheets are the program's, so they are read in every language; a brush's plural is brushes. */
    @ParameterizedTest
    @CsvSource({
        "2 uses, COUNT, 0.05",
        "1 uso, COUNT, 0.025",
        "2 Usos, COUNT, 0.05",
        "1/4 pliego, AREA, 225",
        "2 pliegos, AREA, 1800",
        "2 brushes, COUNT, 3"
    })
    void understandsTheWordsThatMeanOneOfThem(String text, Dimension dimension, String base) {
        List<NamedMeasure> measures = List.of(
                new NamedMeasure("use", Quantity.of("0.025", Unit.EACH)),
                new NamedMeasure("brush", Quantity.of("1.5", Unit.EACH)),
                new NamedMeasure("sheet", Quantity.of("900", Unit.SQUARE_CENTIMETRE)));
        assertThat(Measures.resolve(text, dimension, measures))
                .isEqualTo(new Measures.Resolved(Quantity.of(base, Unit.base(dimension))));
        assertThat(Measures.toldIn(text, measures)).isPresent();
    }

    @Test
    void takesTheMeasureOfJustThatNameBeforeOneThatIsLikelyMeant() {
        List<NamedMeasure> measures = List.of(
                new NamedMeasure("sheet", Quantity.of("900", Unit.SQUARE_CENTIMETRE)),
                new NamedMeasure("pliego", Quantity.of("700", Unit.SQUARE_CENTIMETRE)),
                new NamedMeasure("tub", Quantity.of("5", Unit.MILLILITRE)),
                new NamedMeasure("tube", Quantity.of("3", Unit.MILLILITRE)));
        assertThat(Measures.resolve("pliego", Dimension.AREA, measures))
                .isEqualTo(new Measures.Resolved(Quantity.of("700", Unit.SQUARE_CENTIMETRE)));
        assertThat(Measures.resolve("2 tubes", Dimension.VOLUME, measures))
                .isEqualTo(new Measures.Resolved(Quantity.of("6", Unit.MILLILITRE)));
    }

    @ParameterizedTest
    @CsvSource({"cup, 1", "Fl Oz, 1", "'', 1", "2 dabs, 1", "dab, 0", "dab, -1"})
    void refusesAMeasureThatCouldMislead(String name, String value) {
        Quantity quantity = Quantity.of(value, Unit.MILLILITRE);
        assertThatThrownBy(() -> new NamedMeasure(name, quantity)).isInstanceOf(IllegalArgumentException.class);
    }
}
