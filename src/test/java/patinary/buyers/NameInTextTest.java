package patinary.buyers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Finding an invented name in the middle of words, and what takes its place. */
class NameInTextTest {

    @ParameterizedTest
    @CsvSource({
        "Ann Invented, Paid by Ann Invented in cash, Paid by X in cash",
        "Ann Invented, ann  INVENTED, X",
        "Ann Invented, (Ann Invented), (X)",
        "Ann Invented, Ann Inventedson, Ann Inventedson",
        "Ann, Annex of Ann's, Annex of X's",
        "@no.one, mail to @no.one., mail to X.",
        "@no.one, @nobone, @nobone",
        "Zoë, zoë and Zoëlla, X and Zoëlla",
        "A, A jar of A, A jar of A"
    })
    void isFoundWhole(String name, String text, String after) {
        assertThat(new NameInText(name).replaced(text, "X")).isEqualTo(after);
    }

    @Property
    void nothingOfItStays(
            @ForAll @AlphaChars @StringLength(min = 2, max = 12) String name,
            @ForAll @AlphaChars @StringLength(max = 9) String before,
            @ForAll @AlphaChars @StringLength(max = 9) String after) {
        NameInText written = new NameInText(name);

        String erased = written.replaced(before + " " + name + "; " + after, "1");

        assertThat(written.isIn(erased)).isFalse();
        assertThat(erased).contains("1");
    }

    @Test
    void theNextErasedNameHasTheNextNumber() {
        assertThat(ErasedName.next(List.of("Ann Invented"))).isEqualTo("Erased buyer 1");
        assertThat(ErasedName.next(List.of("Erased buyer 3", "Erased buyer 12", "Erased buyer x", "erased buyer 99")))
                .isEqualTo("Erased buyer 13");
        assertThat(ErasedName.is("Erased buyer 13")).isTrue();
        assertThat(ErasedName.is("Erased buyer 013")).isFalse();
        assertThat(ErasedName.is("Erased buyer ")).isFalse();
    }
}
