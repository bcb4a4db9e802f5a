package patinary.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The file is printed, in memory and at 300 dots per inch, and read again by a scanner: every cell of every grid that
 * comes with the program holds its own square, where the grid says. The shop and its address are invented.
 */
class LabelFileTest {

    private static final String ADDRESS = "https://shop.example/p/";
    private static final Path PICTURES = Path.of("target", "labels");

    static List<KnownGrid> grids() {
        return BuiltInGrids.load();
    }

    @ParameterizedTest
    @MethodSource("grids")
    void everyCellIsReadAgain(KnownGrid known) throws IOException {
        LabelGrid grid = known.grid();
        List<Label> labels = labels(grid.size(), "Oak side table with a drawer, chalk white");
        byte[] file = LabelFile.labels(grid, 0, labels);

        assertThat(PrintedPage.pages(file)).isEqualTo(1);
        PrintedPage page = PrintedPage.of(file, 0);
        kept(known.key(), page);
        assertThat(page.width()).isCloseTo(grid.pageWidth().doubleValue(), within(0.15));
        assertThat(page.height()).isCloseTo(grid.pageHeight().doubleValue(), within(0.15));
        for (int i = 0; i < grid.size(); i++) {
            Result read = page.read(grid.cells().get(i)).orElseThrow();
            assertThat(read.getText()).isEqualTo(ADDRESS + labels.get(i).code());
            liesRight(grid, read);
        }
        eachCodeIsInPrintThatPeopleRead(file, labels);
    }

    /**
     * The middle of the upper left finder pattern is 3.5 modules into the square (ISO/IEC 18004: a pattern is 7 modules
     * wide), the square 4 modules of margin into the layout; so it is seen whether the label lies where the grid says.
     */
    private static void liesRight(LabelGrid grid, Result read) {
        LabelLayout layout = LabelLayout.of(
                        grid.width().doubleValue(),
                        grid.height().doubleValue(),
                        Square.of(read.getText()).sizeWithMargin())
                .orElseThrow();
        assertThat(layout.module()).isGreaterThanOrEqualTo(0.4);
        double expected = layout.edge() + (4 + 3.5) * layout.module();
        // The points are lower left, upper left, upper right.
        ResultPoint corner = read.getResultPoints()[1];
        assertThat(corner.getX() / PrintedPage.DOTS_PER_MM).isCloseTo(expected, within(0.15));
        assertThat(corner.getY() / PrintedPage.DOTS_PER_MM).isCloseTo(expected, within(0.15));
    }

    private static void eachCodeIsInPrintThatPeopleRead(byte[] file, List<Label> labels) throws IOException {
        StringBuilder words = new StringBuilder();
        PDFTextStripper reader = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) throws IOException {
                words.append(text).append('\n');
                positions.forEach(
                        at -> assertThat(at.getFontSizeInPt()).as(text).isGreaterThanOrEqualTo((float)
                                LabelWords.LEAST_CODE));
                super.writeString(text, positions);
            }
        };
        try (PDDocument document = Loader.loadPDF(file)) {
            reader.getText(document);
        }
        labels.forEach(label -> assertThat(words).contains(label.code()));
    }

    @Test
    void theFirstFreeCellIsTheFirstUsedAndTheNextSheetBeginsAnew() throws IOException {
        LabelGrid grid = LabelGridTest.grid("a4-3x8");
        byte[] file = LabelFile.labels(grid, 22, labels(5, "Tin tray"));

        assertThat(PrintedPage.pages(file)).isEqualTo(2);
        PrintedPage first = PrintedPage.of(file, 0);
        PrintedPage second = PrintedPage.of(file, 1);
        assertThat(IntStream.range(0, 24)
                        .filter(i -> !first.isBlank(grid.cells().get(i))))
                .containsExactly(22, 23);
        assertThat(IntStream.range(0, 24)
                        .filter(i -> !second.isBlank(grid.cells().get(i))))
                .containsExactly(0, 1, 2);
        assertThat(first.read(grid.cells().get(22)).orElseThrow().getText()).isEqualTo(ADDRESS + "P0001");
        assertThat(second.read(grid.cells().get(2)).orElseThrow().getText()).isEqualTo(ADDRESS + "P0005");
    }

    @Test
    void aRollHasAPageForEachLabel() throws IOException {
        LabelGrid roll = LabelGrid.roll(new BigDecimal("50"), new BigDecimal("25"));
        byte[] file = LabelFile.labels(roll, 0, labels(3, "Tin tray"));

        assertThat(PrintedPage.pages(file)).isEqualTo(3);
        for (int i = 0; i < 3; i++) {
            assertThat(PrintedPage.of(file, i)
                            .read(roll.cells().get(0))
                            .orElseThrow()
                            .getText())
                    .isEqualTo(ADDRESS + "P000" + (i + 1));
        }
    }

    /** Nothing in the file is a picture: the squares are drawn, so each printer sets them as sharply as it can. */
    @Test
    void theSquaresAreDrawnAndTheFileAsksNotToBeScaled() throws IOException {
        byte[] file = LabelFile.labels(LabelGridTest.grid("letter-3x10"), 0, labels(30, "Tin tray"));
        try (PDDocument document = Loader.loadPDF(file)) {
            for (PDPage page : document.getPages()) {
                assertThat(StreamSupport.stream(
                                page.getResources().getXObjectNames().spliterator(), false))
                        .isEmpty();
            }
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
        }
        assertThat(file.length).isLessThan(300_000);
    }

    @Test
    void signsThatThePrintDoesNotHaveBecomeQuestionMarks() throws IOException {
        Label label = new Label("P0001", "Крючок – crochet hook \uD83E\uDDF6 \u0007", "€12.00", "P0001");
        byte[] file = LabelFile.labels(LabelGridTest.grid("letter-2x5"), 0, List.of(label));
        try (PDDocument document = Loader.loadPDF(file)) {
            assertThat(new PDFTextStripper().getText(document)).contains("€12.00", "Крючок – crochet hook ? ?");
        }
    }

    @Test
    void aLabelTooSmallForItsSquareIsRefusedAndSaid() {
        LabelGrid small = LabelGrid.roll(new BigDecimal("20"), new BigDecimal("12"));
        List<Label> labels = labels(1, "Tin tray");
        assertThat(LabelFile.canHold(small, labels)).isFalse();
        assertThat(LabelFile.canHold(LabelGridTest.grid("a4-5x13"), labels)).isTrue();
        assertThatThrownBy(() -> LabelFile.labels(small, 0, labels)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Upper left and lower right corner of every outline, and the two ends of the ruler, 100 mm apart. */
    @ParameterizedTest
    @MethodSource("grids")
    void theTestPageShowsWhereTheLabelsAre(KnownGrid known) throws IOException {
        LabelGrid grid = known.grid();
        PrintedPage page = PrintedPage.of(LabelFile.test(grid, "An invented shop, 100 mm"), 0);
        kept(known.key() + "-test", page);
        for (LabelGrid.Cell cell : grid.cells()) {
            double left = cell.left().doubleValue();
            double top = cell.top().doubleValue();
            double right = left + cell.width().doubleValue();
            double foot = top + cell.height().doubleValue();
            assertThat(page.isDarkNear((left + right) / 2, top)).isTrue();
            assertThat(page.isDarkNear((left + right) / 2, foot)).isTrue();
            assertThat(page.isDarkNear(left, (top + foot) / 2 - 6)).isTrue();
            assertThat(page.isDarkNear(right, (top + foot) / 2 - 6)).isTrue();
        }
        int length = TestPage.ruler(grid);
        double start = (grid.pageWidth().doubleValue() - length) / 2;
        double tick = grid.pageHeight().doubleValue() / 2 - 3.8;
        assertThat(length % 10).isZero();
        assertThat(page.isDarkNear(start, tick)).isTrue();
        assertThat(page.isDarkNear(start + length, tick)).isTrue();
        assertThat(page.isDarkNear(start + length + 1.5, tick)).isFalse();
    }

    private static List<Label> labels(int count, String title) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> "P%04d".formatted(number))
                .map(code -> new Label(code, title, "$1,250.00", ADDRESS + code))
                .toList();
    }

    /** Kept to be looked at. */
    private static void kept(String name, PrintedPage page) throws IOException {
        Files.createDirectories(PICTURES);
        ImageIO.write(page.picture(), "png", PICTURES.resolve(name + ".png").toFile());
    }
}
