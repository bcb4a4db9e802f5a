package patinary.labels;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import patinary.web.PrintFont;

/** Draws on a page in millimetres from its upper left corner; the file itself counts in points from below. */
final class LabelPen implements AutoCloseable {

    private static final double POINTS_PER_MM = 72 / 25.4;

    private static final double OUTLINE = 0.2;

    private final PDPageContentStream stream;
    private final PDFont font;
    private final double height;

    LabelPen(PDDocument document, PDPage page, PDFont font) throws IOException {
        this.stream = new PDPageContentStream(document, page);
        this.font = font;
        this.height = page.getMediaBox().getHeight();
    }

    static float points(double millimetres) {
        return (float) (millimetres * POINTS_PER_MM);
    }

    /** How wide a text is, in millimetres; signs that the print does not have count as a question mark. */
    static double width(PDFont font, String text, double points) {
        return PrintFont.width(font, text, points) / POINTS_PER_MM;
    }

    /** Adds a filled rectangle; what was added shows after {@link #fill}. */
    void block(double left, double top, double width, double blockHeight) throws IOException {
        stream.addRect(points(left), y(top + blockHeight), points(width), points(blockHeight));
    }

    /** All blocks in one go, so that no hair of paper shows between two that touch. */
    void fill() throws IOException {
        stream.fill();
    }

    /** A line just inside a box, so that none of it is lost where the box ends with the page. */
    void outline(double left, double top, double width, double boxHeight) throws IOException {
        double inside = OUTLINE / 2;
        stream.setLineWidth(points(OUTLINE));
        stream.addRect(
                points(left + inside),
                y(top + boxHeight - inside),
                points(width - OUTLINE),
                points(boxHeight - OUTLINE));
        stream.stroke();
    }

    void line(double fromX, double fromY, double toX, double toY) throws IOException {
        stream.setLineWidth(points(0.2));
        stream.moveTo(points(fromX), y(fromY));
        stream.lineTo(points(toX), y(toY));
        stream.stroke();
    }

    void text(double left, double baseline, double size, String text) throws IOException {
        stream.beginText();
        stream.setFont(font, (float) size);
        stream.newLineAtOffset(points(left), y(baseline));
        stream.showText(PrintFont.printable(font, text));
        stream.endText();
    }

    private float y(double top) {
        return (float) (height - points(top));
    }

    @Override
    public void close() throws IOException {
        stream.close();
    }
}
