package patinary.yearfolder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;
import patinary.web.PrintFont;

/** Writes headings, texts and lines with amounts down the page, and goes on to the next one. */
final class SummaryPen implements AutoCloseable {

    private static final float MARGIN = 54;
    private static final float LEADING = 1.35f;
    private static final float SIZE = 9;
    private static final float LARGE = 13;
    private static final float NUMBERS = 34;
    private static final float FACTS = 140;
    private static final float AMOUNTS = 130;

    private final PDDocument document;
    private final PDFont font;
    private final PDRectangle paper;
    private final float right;
    private final IntFunction<String> foot;
    private @Nullable PDPageContentStream stream;
    private float y;
    private int page;

    SummaryPen(PDDocument document, PDRectangle paper, IntFunction<String> foot) throws IOException {
        this.document = document;
        this.paper = paper;
        this.right = paper.getWidth() - MARGIN;
        this.font = PrintFont.of(document);
        this.foot = foot;
    }

    void heading(String text) {
        room(LARGE * 4);
        y -= SIZE;
        write(text, MARGIN, LARGE, right - MARGIN);
    }

    void text(String text) {
        room(SIZE * 2);
        write(text, MARGIN, SIZE, right - MARGIN);
    }

    /** A word and what it is, beside each other. */
    void fact(String what, String is) {
        room(SIZE * 4);
        put(what, MARGIN, y - SIZE * LEADING, SIZE);
        write(is, MARGIN + FACTS, SIZE, right - MARGIN - FACTS);
    }

    /** A number, a title, and an amount that ends at the right edge. */
    void line(String number, String title, String amount) {
        room(SIZE * 4);
        float top = y;
        put(number, MARGIN, top - SIZE * LEADING, SIZE);
        put(amount, right - (float) PrintFont.width(font, amount, SIZE), top - SIZE * LEADING, SIZE);
        write(title, MARGIN + NUMBERS, SIZE, right - MARGIN - NUMBERS - AMOUNTS);
    }

    private void write(String text, float left, float size, float width) {
        for (String line : wrapped(text, size, width)) {
            room(size * LEADING);
            y -= size * LEADING;
            put(line, left, y, size);
        }
    }

    private List<String> wrapped(String text, float size, float width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && PrintFont.width(font, longer, size) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    private void room(float needed) {
        if (stream == null || y - needed < MARGIN) {
            next();
        }
    }

    private void next() {
        try {
            close();
            PDPage sheet = new PDPage(paper);
            document.addPage(sheet);
            stream = new PDPageContentStream(document, sheet);
            page++;
            put(foot.apply(page), MARGIN, MARGIN / 2, SIZE - 1);
            y = paper.getHeight() - MARGIN;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void put(String text, float left, float baseline, float size) {
        PDPageContentStream to = java.util.Objects.requireNonNull(stream);
        try {
            to.beginText();
            to.setFont(font, size);
            to.newLineAtOffset(left, baseline);
            to.showText(PrintFont.printable(font, text));
            to.endText();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @Override
    public void close() throws IOException {
        if (stream != null) {
            stream.close();
            stream = null;
        }
    }
}
