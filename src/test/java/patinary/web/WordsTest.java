package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class WordsTest {

    @Test
    void standAnywhereAndInAnyCase() {
        assertThat(Words.anywhere("  Blue JUG ")).isEqualTo("%blue jug%");
        assertThat(Words.anywhere("")).isEqualTo("%%");
    }

    @Test
    void signsThatMeanAnythingMeanThemselves() {
        assertThat(Words.anywhere("50%_off!")).isEqualTo("%50!%!_off!!%");
    }

    @Test
    void areLookedForInOneTextOrAnother() {
        assertThat(Words.in("p.code", "p.title"))
                .isEqualTo("(lower(p.code) like :words escape '!' or lower(p.title) like :words escape '!')");
    }
}
