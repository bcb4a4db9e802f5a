package patinary.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Words on a label, with a ruler by which every sign is a quarter of a millimetre wide for each point of its size. */
class LabelWordsTest {

    private static List<LabelWords.Line> lines(String code, String price, String title, double width, double height) {
        return LabelWords.of(code, price, title, (text, points) -> text.length() * points / 4, width, height);
    }

    /** Five signs at 12 pt are 15 mm: fits 15. Lines of 12, 10, 8, 8 pt take 5.08, 4.23, 3.39, 3.39 = 16.1 mm. */
    @Test
    void codePriceAndTitleStandBelowEachOther() {
        List<LabelWords.Line> lines = lines("P0001", "$1.00", "Oak box old", 15, 17);
        assertThat(lines).extracting(LabelWords.Line::text).containsExactly("P0001", "$1.00", "Oak box", "old");
        assertThat(lines).extracting(LabelWords.Line::points).containsExactly(12.0, 10.0, 8.0, 8.0);
        assertThat(lines).extracting(LabelWords.Line::baseline).isSorted();
    }

    /** A code of 8 signs on 17 mm: 8.5 pt is just right (8 × 8.5 ÷ 4). */
    @Test
    void aLongerCodeIsPrintedSmaller() {
        assertThat(lines("WARDROBE", "", "", 17, 20).get(0).points()).isEqualTo(8.5);
    }

    /** Never below 8 pt: at 10 mm only 5 signs fit, so a code of 12 takes three lines and nothing of it is lost. */
    @Test
    void theCodeIsNeverCut() {
        List<LabelWords.Line> lines = lines("WARDROBE2025", "$1.00", "Oak", 10, 4);
        assertThat(lines).extracting(LabelWords.Line::text).containsExactly("WARDR", "OBE20", "25");
        assertThat(lines).allMatch(line -> line.points() == 8);
    }

    @Test
    void theTitleGivesWayAndSaysSo() {
        List<LabelWords.Line> lines = lines("P1", "", "Wardrobe with two doors", 16, 9);
        assertThat(lines).extracting(LabelWords.Line::text).containsExactly("P1", "Wardrob…");
    }
}
