package patinary.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import patinary.labels.LabelGrid.Cell;
import patinary.labels.LabelGrid.Fault;

/** Where labels lie, worked by hand from the measures of a sheet: start + index × (size + gap). */
class LabelGridTest {

    static List<KnownGrid> builtIn() {
        return BuiltInGrids.load();
    }

    /**
     * Letter, 3 across and 10 down: the second label begins at 4.7625 + 66.675 + 3.175 = 74.6125 mm; the last row at
     * 12.7 + 9 × 25.4 = 241.3 mm; the last column at 4.7625 + 2 × 69.85 = 144.4625 mm and ends at 211.1375 mm, which
     * leaves the left margin's 4.7625 mm of 215.9 mm free.
     */
    @Test
    void letterThreeByTen() {
        List<Cell> cells = grid("letter-3x10").cells();
        assertThat(cells).hasSize(30);
        assertThat(at(cells.get(0))).isEqualTo("4.7625 12.7");
        assertThat(at(cells.get(1))).isEqualTo("74.6125 12.7");
        assertThat(at(cells.get(29))).isEqualTo("144.4625 241.3");
        assertThat(new BigDecimal("215.9").subtract(new BigDecimal("144.4625")).subtract(new BigDecimal("66.675")))
                .isEqualByComparingTo("4.7625");
    }

    /** A4, 3 across and 8 down: columns at 7.25, 73.25, 139.25; rows at 12.9, 46.8, ..., 12.9 + 7 × 33.9 = 250.2. */
    @Test
    void a4ThreeByEight() {
        List<Cell> cells = grid("a4-3x8").cells();
        assertThat(cells).hasSize(24);
        assertThat(Stream.of(cells.get(0), cells.get(1), cells.get(2), cells.get(3), cells.get(23))
                        .map(LabelGridTest::at))
                .containsExactly("7.25 12.9", "73.25 12.9", "139.25 12.9", "7.25 46.8", "139.25 250.2");
    }

    @Test
    void aRollIsOneLabelOnAPageOfItsSize() {
        LabelGrid roll = LabelGrid.roll(new BigDecimal("57"), new BigDecimal("32"));
        assertThat(roll.size()).isEqualTo(1);
        assertThat(roll.pageWidth()).isEqualByComparingTo("57");
        assertThat(roll.pageHeight()).isEqualByComparingTo("32");
        assertThat(at(roll.cells().get(0))).isEqualTo("0 0");
        assertThat(roll.fault()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("builtIn")
    void whatComesWithTheProgramFits(KnownGrid known) {
        assertThat(known.grid().fault()).isEmpty();
        // Left and right alike, above and below alike, as such sheets are cut.
        Cell last = known.grid().cells().get(known.grid().size() - 1);
        assertThat(known.grid().pageWidth().subtract(last.left()).subtract(last.width()))
                .isEqualByComparingTo(known.grid().left());
        assertThat(known.grid().pageHeight().subtract(last.top()).subtract(last.height()))
                .isEqualByComparingTo(known.grid().top());
    }

    /** A4 is 210 × 297: 3 × 70 fills it to the last thousandth; a tenth more does not fit, nor does a ninth row of 33. */
    @ParameterizedTest
    @CsvSource({
        "8, 3, 0, 0.5, 70, 37, 0, 0, ",
        "8, 3, 0.001, 0.5, 70, 37, 0, 0, TOO_WIDE",
        "8, 3, 0, 0.5, 70, 37, 0.1, 0, TOO_WIDE",
        "9, 3, 0, 0, 70, 33, 0, 0, ",
        "9, 3, 0, 0, 70, 33, 0, 0.01, TOO_HIGH",
        "10, 3, 0, 0, 70, 33, 0, 0, TOO_HIGH",
        "0, 3, 0, 0, 70, 33, 0, 0, NOTHING",
        "1, 1, 0, 0, 0, 33, 0, 0, NOTHING",
        "40, 40, 0, 0, 1, 1, 0, 0, TOO_MANY",
        "65536, 65536, 0, 0, 1, 1, 0, 0, TOO_MANY"
    })
    void aGridThatDoesNotFitIsFound(
            int rows,
            int columns,
            BigDecimal left,
            BigDecimal top,
            BigDecimal width,
            BigDecimal height,
            BigDecimal across,
            BigDecimal down,
            Fault fault) {
        LabelGrid grid = new LabelGrid(Paper.A4, rows, columns, left, top, width, height, across, down);
        assertThat(grid.fault().orElse(null)).isEqualTo(fault);
    }

    static LabelGrid grid(String key) {
        return builtIn().stream()
                .filter(known -> known.key().equals(key))
                .findFirst()
                .orElseThrow()
                .grid();
    }

    private static String at(Cell cell) {
        return plain(cell.left()) + " " + plain(cell.top());
    }

    private static String plain(BigDecimal length) {
        return length.signum() == 0 ? "0" : length.stripTrailingZeros().toPlainString();
    }
}
