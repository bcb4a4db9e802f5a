package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.ShopCurrency;

/** Sources: RFC 4180; OWASP ASVS 5.0 requirement 1.2.10; CWE-1236. The cells are invented. */
class CsvFileTest {

    private final CsvFile file = new CsvFile(ShopCurrency.ofCode("USD"), "a");

    @Test
    void noTextCanStartAFormula() {
        assertThat(CsvWriter.harmless("=1+1")).isEqualTo("'=1+1");
        assertThat(CsvWriter.harmless("-5 lamp")).isEqualTo("'-5 lamp");
        assertThat(CsvWriter.harmless("@home")).isEqualTo("'@home");
        assertThat(CsvWriter.harmless("\t=x")).isEqualTo("'\t=x");
        assertThat(CsvWriter.harmless("\u0000=x")).isEqualTo("'\u0000=x");
        assertThat(CsvWriter.harmless("\uff1dx")).isEqualTo("'\uff1dx");
        assertThat(CsvWriter.harmless("'=x")).isEqualTo("''=x");
        assertThat(CsvWriter.harmless("'quoted")).isEqualTo("'quoted");
        assertThat(CsvWriter.harmless("a=b")).isEqualTo("a=b");
        assertThat(CsvWriter.harmless("")).isEmpty();
    }

    @Test
    void numbersAmountsAndDaysStayBare() {
        file.row(Amount.of(-500), new BigDecimal("-12.50000000000000"), -3L, LocalDate.of(2025, 3, 8), null);
        assertThat(text()).isEqualTo("a\r\n-5.00,-12.5,-3,2025-03-08,\r\n");
    }

    @Test
    void aCellThatHoldsSeparatorsStaysOneCell() {
        file.row("x\",\"=2+3");
        assertThat(text()).isEqualTo("a\r\n\"x\"\",\"\"=2+3\"\r\n");
    }

    private String text() {
        return new String(file.bytes(), StandardCharsets.UTF_8);
    }
}
