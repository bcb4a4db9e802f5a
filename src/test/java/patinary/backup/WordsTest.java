package patinary.backup;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prefixes of the SI brochure, 9th edition, table 7: k is 1000, M a million. */
class WordsTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0 B",
        "999, 999 B",
        "1000, 1.0 kB",
        "9949, 9.9 kB",
        "9950, 10 kB",
        "999499, 999 kB",
        "999500, 1.0 MB",
        "1617895, 1.6 MB",
        "14839313, 15 MB",
        "9223372036854775807, 9.2 EB"
    })
    void aSizeIsTwoOrThreeDigitsAndAUnit(long bytes, String words) {
        assertThat(Words.size(bytes)).isEqualTo(words);
    }
}
