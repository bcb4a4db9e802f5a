package patinary.asking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Kaplan and Meier, J. Am. Stat. Assoc. 53 (1958) 457–481; the median as the R package survival 3.5-3 prints it. */
class SellingTimeTest {

    /** Freireich et al., Blood 21 (1963) 699–716, as given by Cox and Oakes (1984) p. 7; medians 23 and 8 by R. */
    @Test
    void ofThePublishedExample() {
        assertThat(median("6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+"))
                .contains(46L);
        assertThat(median("1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23")).contains(16L);
    }

    /** Half at 5 and less than half at 6: the middle, 5.5. A binary fraction gets this wrong. */
    @Test
    void theMiddleWhereItStaysAtOneHalf() {
        assertThat(median("1 2 3 4 5 6 7 8 9 10")).contains(11L);
    }

    /** R prints 5 where nothing sells after one half is left. */
    @Test
    void theBeginningWhereItEndsAtOneHalf() {
        assertThat(median("3 5 8+ 12+")).contains(10L);
    }

    @Test
    void nothingWhileMoreThanHalfAreLeft() {
        assertThat(median("3 8+ 12+")).isEmpty();
        assertThat(median("")).isEmpty();
    }

    /** What sells on its first day took no day; by hand: 1 of 3, then 1 of 2 leaves a third. */
    @Test
    void theSameDayCounts() {
        assertThat(median("0 4 9+")).contains(8L);
        assertThat(median("0 0 9+")).contains(0L);
    }

    private static Optional<Long> median(String tries) {
        List<SellingTime.Try> all = Arrays.stream(tries.split(" "))
                .filter(text -> !text.isEmpty())
                .map(text -> new SellingTime.Try(Long.parseLong(text.replace("+", "")), !text.endsWith("+")))
                .toList();
        return SellingTime.medianHalfDays(all);
    }
}
