package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.taxyear.YearRows.Posted;

/** A fingerprint changes with any figure and with nothing else. */
class PostingsHashTest {

    private final Posted one = posted(0, 1250, "1.50");
    private final Posted two = posted(1, -1250, "0");

    /** SHA-256 of nothing: FIPS 180-4, the well-known value. */
    @Test
    void ofNoPostings() {
        assertThat(PostingsHash.of(List.of()))
                .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    @Test
    void doesNotDependOnTheOrderOfReadingOrOnTrailingZeros() {
        assertThat(PostingsHash.of(List.of(two, posted(0, 1250, "1.50000000000000"))))
                .isEqualTo(PostingsHash.of(List.of(one, two)));
    }

    @Test
    void changesWithAnAmount() {
        assertThat(PostingsHash.of(List.of(one, posted(1, -1251, "0"))))
                .isNotEqualTo(PostingsHash.of(List.of(one, two)));
        assertThat(PostingsHash.of(List.of(one))).isNotEqualTo(PostingsHash.of(List.of(one, two)));
    }

    private static Posted posted(int line, long minor, String quantity) {
        return new Posted(
                new UUID(0, 7),
                line,
                LocalDate.of(2025, 3, 8),
                "EXPENSE",
                "a note",
                "EXPENSE",
                "office",
                null,
                null,
                null,
                null,
                null,
                false,
                minor,
                new BigDecimal(quantity),
                null,
                null,
                null,
                null,
                null,
                "EXPENSE",
                null,
                false);
    }
}
