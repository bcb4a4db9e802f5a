package patinary.labels;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetReadingTest {

    @ParameterizedTest
    @CsvSource({"P0012 x3", "P0012 X 3", "P0012 ×3", "P0012 * 3", "P0012  x 03"})
    void aCodeIsCopiedAsOftenAsItSays(String typed) {
        assertThat(SheetReading.copies(typed)).containsExactly("P0012", "P0012", "P0012");
    }

    @Test
    void eachLineHasItsOwnCopies() {
        assertThat(SheetReading.copies("P0001 x2\nP0002\r\nbox-x3, P0004 x1"))
                .containsExactly("P0001", "P0001", "P0002", "box-x3", "P0004");
    }

    @Test
    void noCopiesAreNoLabel() {
        assertThat(SheetReading.copies("P0001 x0")).isEmpty();
        assertThat(SheetReading.copies(" \n ,")).isEmpty();
    }
}
