package patinary.slips;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.opentest4j.TestAbortedException;

/**
 * Reads 24 drawn slips with the reading program. Without it the test is left out with a loud message; with
 * {@code -Dpatinary.reading=required} it fails. It touches no database, so it runs once.
 */
class SlipReadingTest {

    @Test
    void mostOfTheDrawnSlipsIsReadRightly() throws Exception {
        ReadingProgram program = new ReadingProgram("tesseract");
        need(program);
        SlipRates rates = SlipRates.measure(program, EnumSet.allOf(SlipPicture.Step.class));
        System.out.println(rates);
        assertThat(rates.linesRight).as(rates + " " + rates.wrong).isGreaterThanOrEqualTo(SlipRates.LINES_AT_LEAST);
        assertThat(rates.extra).as(rates + " " + rates.wrong).isLessThanOrEqualTo(5);
        assertThat(rates.totalRight).as(rates + " " + rates.wrong).isGreaterThanOrEqualTo(19);
        assertThat(rates.dateRight).as(rates + " " + rates.wrong).isGreaterThanOrEqualTo(22);
        assertThat(rates.shopRight).as(rates + " " + rates.wrong).isGreaterThanOrEqualTo(22);
    }

    private static void need(ReadingProgram program) {
        if (program.isInstalled()) {
            return;
        }
        String missing = "NO READING PROGRAM (tesseract): reading slips is NOT tested";
        if ("required".equals(System.getProperty("patinary.reading"))) {
            throw new AssertionError(missing);
        }
        System.err.println(missing);
        throw new TestAbortedException(missing);
    }
}
