package patinary.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Risky first signs: OWASP ASVS 5.0 requirement 1.2.10, CWE-1236, and the full-width forms. */
class SafeTextTest {

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "=1+1,'=1+1",
                "-5 lamp,'-5 lamp",
                "@home,'@home",
                "+1 more,'+1 more",
                "'quoted,'quoted",
                "'=x,''=x",
                "'','',",
                "a=b,a=b",
                "\"\t=x\",\"'\t=x\"",
                "\uFF1Dx,'\uFF1Dx"
            })
    void guardsWhatASpreadsheetWouldTakeForAFormula(String text, String cell) {
        assertThat(SafeText.guard(text)).isEqualTo(cell);
        assertThat(SafeText.restore(cell)).isEqualTo(text);
    }

    @Property
    void everyTextComesBackAsItWas(@ForAll("texts") String text) {
        String cell = SafeText.guard(text);

        assertThat(SafeText.restore(cell)).isEqualTo(text);
        assertThat(cell).doesNotMatch("(?s)[=+\\-@\\t\\r\\n\\x00\uFF1D\uFF0B\uFF0D\uFF20].*");
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.oneOf(
                Arbitraries.strings(),
                Arbitraries.strings().withChars("'=+-@\t\r\n\",a\uFF1D").ofMaxLength(6));
    }
}
