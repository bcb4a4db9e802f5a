package patinary.labels;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The outlines of all labels of a page, their numbers, and a ruler in whole centimetres. */
final class TestPage {

    private static final int LONGEST = 100;
    private static final double NUMBER = 8;
    private static final double WORDS = 8;

    private final LabelGrid grid;
    private final LabelPen pen;
    private final PDFont font;

    TestPage(LabelGrid grid, LabelPen pen, PDFont font) {
        this.grid = grid;
        this.pen = pen;
        this.font = font;
    }

    /** How long the ruler is, in millimetres: as many whole centimetres as the page has room for, at most ten. */
    static int ruler(LabelGrid grid) {
        int room = grid.pageWidth().intValue() - 4;
        return Math.min(LONGEST, room / 10 * 10);
    }

    /** @param words what stands above the ruler */
    void draw(String words) throws IOException {
        List<LabelGrid.Cell> cells = grid.cells();
        for (int i = 0; i < cells.size(); i++) {
            LabelGrid.Cell cell = cells.get(i);
            double left = cell.left().doubleValue();
            double top = cell.top().doubleValue();
            pen.outline(left, top, cell.width().doubleValue(), cell.height().doubleValue());
            pen.text(left + 1.5, top + 4, NUMBER, String.valueOf(i + 1));
        }
        ruler(words);
    }

    private void ruler(String words) throws IOException {
        int length = ruler(grid);
        double left = (grid.pageWidth().doubleValue() - length) / 2;
        double foot = grid.pageHeight().doubleValue() / 2;
        pen.line(left, foot, left + length, foot);
        for (int millimetre = 0; millimetre <= length; millimetre++) {
            double tick = millimetre % 10 == 0 ? 4 : millimetre % 5 == 0 ? 3 : 1.5;
            pen.line(left + millimetre, foot - tick, left + millimetre, foot);
        }
        double wide = LabelPen.width(font, words, WORDS);
        double size = wide > length ? WORDS * length / wide : WORDS;
        pen.text(left, foot + 7, size, words);
    }
}
