package patinary.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class PackTest {

    private static final Pack SHEETS = new Pack(3, Quantity.parse("12 x 12 in"));

    /** Derived from NIST Handbook 44, Appendix C: a 12 x 12 in sheet is 929.0304 cm². */
    @Test
    void holdsAllOfItsSheets() {
        assertThat(SHEETS.contents(new BigDecimal("2"))).isEqualTo(Quantity.of("5574.1824", Unit.SQUARE_CENTIMETRE));
        assertThat(new Pack(6, Quantity.parse("4 fl oz"))
                        .contents(BigDecimal.ONE)
                        .inBase())
                .isEqualByComparingTo("709.7647095");
    }

    @Test
    void countsWholePacks() {
        assertThat(SHEETS.toHold(Quantity.parse("3 sq ft"))).isEqualTo(1);
        assertThat(SHEETS.toHold(Quantity.parse("3.0001 sq ft"))).isEqualTo(2);
        assertThat(SHEETS.toHold(Quantity.parse("0 sq ft"))).isZero();
        assertThatThrownBy(() -> SHEETS.toHold(Quantity.parse("1 cup"))).isInstanceOf(WrongDimension.class);
    }

    @Test
    void refusesToHoldNothing() {
        assertThatThrownBy(() -> new Pack(0, Quantity.parse("1 cup"))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Pack(1, Quantity.parse("0 cup"))).isInstanceOf(IllegalArgumentException.class);
    }
}
