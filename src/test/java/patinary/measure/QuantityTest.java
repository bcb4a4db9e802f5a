package patinary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.math.MathContext;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

    /** Fixtures derived from NIST Handbook 44, Appendix C. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8 fl oz | 236.5882365",
                "1/4 cup | 59.147059125",
                "0.5 tsp | 2.464460796875",
                "1 1/2 tbsp | 22.180147171875",
                "1½ tbsp | 22.180147171875",
                "½ cup | 118.29411825",
                "2 TBSP | 29.5735295625",
                "0,5 l | 500",
                ".5 l | 500",
                "1 quart | 946.352946",
                "2 gal. | 7570.823568",
                "1.5 lbs | 680.388555",
                "250g | 250",
                "12 x 12 in | 929.0304",
                "12 × 8 in | 619.3536",
                "12in by 8in | 619.3536",
                "12\" X 8\" | 619.3536",
                "1 ft x 6 in | 464.5152",
                "2 1/2 x 4 cm | 10",
                "3 sq ft | 2787.0912",
                "3 ft² | 2787.0912",
                "7 | 7",
                "3 each | 3"
            })
    void readsWhatPeopleType(String text, BigDecimal base) {
        assertThat(Quantity.parse(text).inBase()).isEqualByComparingTo(base);
    }

    @Test
    void roundsOnlyFractionsWithoutAnExactDecimal() {
        assertThat(Quantity.parse("1/3 cup").value()).isEqualTo("0.33333333333333");
        assertThat(Quantity.parse("2/3 cup").value()).isEqualTo("0.66666666666667");
        assertThat(Quantity.parse("1/32768 in").value()).isEqualTo("0.000030517578125");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | missing",
                "' ' | missing",
                "cup | number",
                "-1 cup | number",
                "1 2 3 cup | number",
                "1/0 cup | zeroDenominator",
                "1,234 ml | ambiguous",
                "3 hogsheads | unit",
                "12 x 8 | unitMissing",
                "12 in x 8 | unitMissing",
                "12 x 8 cup | cut",
                "12 x 8 in2 | cut",
                "2 cup x 8 in | cut"
            })
    void refusesTheRestWithAReason(String text, String reason) {
        UnreadableQuantity refused = catchThrowableOfType(UnreadableQuantity.class, () -> Quantity.parse(text));
        assertThat(refused).as(text).isNotNull();
        assertThat(refused.messageKey()).isEqualTo("measure.error." + reason);
        assertThat(refused.arguments()).hasSize(1);
    }

    @Test
    void saysWhatIsMeasuredAndWhatIsWanted() {
        WrongDimension wrong = catchThrowableOfType(
                WrongDimension.class, () -> Quantity.of("1", Unit.CUP).to(Unit.SQUARE_FOOT, MathContext.DECIMAL64));
        assertThat(wrong.messageKey()).isEqualTo("measure.error.wrongDimension");
        assertThat(wrong.arguments())
                .containsExactly("measure.unit.cup", "measure.dimension.volume", "measure.dimension.area");
        assertThat(wrong.unit()).isEqualTo(Unit.CUP);
        assertThat(wrong.wanted()).isEqualTo(Dimension.AREA);
    }

    @Test
    void neverMixesFluidOuncesWithOunces() {
        Quantity fluid = Quantity.of("1", Unit.FLUID_OUNCE);
        assertThatThrownBy(() -> fluid.plus(Quantity.of("1", Unit.OUNCE))).isInstanceOf(WrongDimension.class);
        assertThatThrownBy(() -> fluid.minus(Quantity.of("1", Unit.OUNCE))).isInstanceOf(WrongDimension.class);
        assertThatThrownBy(() -> Quantity.area(fluid, fluid)).isInstanceOf(WrongDimension.class);
    }

    @Test
    void addsExactly() {
        Quantity cup = Quantity.of("1", Unit.CUP);
        assertThat(cup.plus(Quantity.of("0.5", Unit.CUP))).isEqualTo(Quantity.of("1.5", Unit.CUP));
        assertThat(cup.plus(Quantity.of("8", Unit.FLUID_OUNCE))).isEqualTo(Quantity.of("473.176473", Unit.MILLILITRE));
        assertThat(cup.minus(Quantity.of("2", Unit.CUP))).isEqualTo(Quantity.of("-1", Unit.CUP));
    }

    @Test
    void writesOneFormOfEachNumber() {
        assertThat(Quantity.of("1.50", Unit.CUP)).isEqualTo(Quantity.of("1.5", Unit.CUP));
        assertThat(Quantity.of("0.00", Unit.CUP).inBase().toString()).isEqualTo("0");
        assertThat(Quantity.of("2", Unit.LITRE).inBase().toString()).isEqualTo("2000");
        assertThat(Quantity.of("1E+3", Unit.GRAM).value().toString()).isEqualTo("1000");
    }

    @Property
    void comesBackFromItsBase(@ForAll @BigRange(min = "0", max = "1000000") @Scale(6) BigDecimal value) {
        for (Unit unit : Unit.values()) {
            Quantity quantity = new Quantity(value, unit);
            Quantity base = Quantity.ofBase(quantity.inBase(), unit.dimension());
            assertThat(base.to(unit, MathContext.DECIMAL128)).isEqualTo(quantity);
        }
    }

    @Property
    void readsBackWhatItWrites(@ForAll @BigRange(min = "0", max = "99999") @Scale(4) BigDecimal value) {
        for (Unit unit : Unit.values()) {
            Quantity quantity = new Quantity(value, unit);
            assertThat(Quantity.parse(quantity.value().toPlainString() + " " + unit.code()))
                    .isEqualTo(quantity);
        }
    }
}
