package patinary.labels;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
import patinary.web.PrintFont;

/** Writes labels as a file that is printed at 100%; PDF, ISO 32000. */
final class LabelFile {

    private final LabelGrid grid;
    private final PDDocument document;
    private final PDFont font;

    private LabelFile(LabelGrid grid, PDDocument document) throws IOException {
        this.grid = grid;
        this.document = document;
        this.font = PrintFont.of(document);
    }

    /** Whether every label's square can be read from this grid. */
    static boolean canHold(LabelGrid grid, List<Label> labels) {
        return labels.stream()
                .allMatch(label -> layout(grid, Square.of(label.scanned())).isPresent());
    }

    /**
     * The labels, one to a cell.
     *
     * @param first how many cells of the first sheet are used up already
     * @throws IllegalArgumentException where a square does not fit; see {@link #canHold}
     */
    static byte[] labels(LabelGrid grid, int first, List<Label> labels) {
        return write(grid, file -> {
            int from = Math.floorMod(first, grid.size());
            int at = 0;
            while (at < labels.size()) {
                int to = Math.min(labels.size(), at + grid.size() - from);
                file.sheet(from, labels.subList(at, to));
                at = to;
                from = 0;
            }
        });
    }

    /** A page to be held against a sheet: where the labels are, and a line to measure whether the size is right. */
    static byte[] test(LabelGrid grid, String words) {
        return write(grid, file -> {
            try (LabelPen pen = file.page()) {
                new TestPage(grid, pen, file.font).draw(words);
            }
        });
    }

    @FunctionalInterface
    private interface Drawing {
        void on(LabelFile file) throws IOException;
    }

    private static byte[] write(LabelGrid grid, Drawing drawing) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            PDViewerPreferences wishes = new PDViewerPreferences(new COSDictionary());
            wishes.setPrintScaling(PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(wishes);
            drawing.on(new LabelFile(grid, document));
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private LabelPen page() throws IOException {
        PDPage page = new PDPage(new PDRectangle(
                LabelPen.points(grid.pageWidth().doubleValue()),
                LabelPen.points(grid.pageHeight().doubleValue())));
        document.addPage(page);
        return new LabelPen(document, page, font);
    }

    private void sheet(int from, List<Label> labels) throws IOException {
        List<LabelGrid.Cell> cells = grid.cells();
        try (LabelPen pen = page()) {
            for (int i = 0; i < labels.size(); i++) {
                label(pen, cells.get(from + i), labels.get(i));
            }
        }
    }

    private void label(LabelPen pen, LabelGrid.Cell cell, Label label) throws IOException {
        Square square = Square.of(label.scanned());
        LabelLayout layout = layout(grid, square)
                .orElseThrow(() -> new IllegalArgumentException("The square does not fit on the label"));
        double left = cell.left().doubleValue();
        double top = cell.top().doubleValue();
        double margin = layout.edge() + Square.QUIET * layout.module();
        square(pen, square, left + margin, top + margin, layout.module());
        List<LabelWords.Line> lines = LabelWords.of(
                label.code(),
                label.price(),
                label.title(),
                (text, points) -> LabelPen.width(font, text, points),
                layout.textWidth(),
                layout.textHeight());
        for (LabelWords.Line line : lines) {
            pen.text(left + layout.textLeft(), top + layout.textTop() + line.baseline(), line.points(), line.text());
        }
    }

    /** Drawn as lines of dark modules, never as a picture, so that a printer sets each edge as sharply as it can. */
    private static void square(LabelPen pen, Square square, double left, double top, double module) throws IOException {
        for (int row = 0; row < square.size(); row++) {
            int column = 0;
            while (column < square.size()) {
                int start = column;
                while (column < square.size() && square.isDark(column, row)) {
                    column++;
                }
                if (column > start) {
                    pen.block(left + start * module, top + row * module, (column - start) * module, module);
                }
                column++;
            }
        }
        pen.fill();
    }

    private static Optional<LabelLayout> layout(LabelGrid grid, Square square) {
        return LabelLayout.of(grid.width().doubleValue(), grid.height().doubleValue(), square.sizeWithMargin());
    }
}
