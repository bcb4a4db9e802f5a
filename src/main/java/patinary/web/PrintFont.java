package patinary.web;

import java.io.IOException;
import java.io.InputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.font.PDType1Font;

/** The letters of everything that is printed; what they lack is printed as a question mark. */
public final class PrintFont {

    /** Comes with the library that writes the file; SIL Open Font License. */
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private PrintFont() {}

    public static PDFont of(PDDocument document) throws IOException {
        try (InputStream file = PDType1Font.class.getResourceAsStream(FILE)) {
            if (file == null) {
                throw new IOException("The program was packed without " + FILE);
            }
            return PDType0Font.load(document, file, true);
        }
    }

    /** How wide a text is, in points. */
    public static double width(PDFont font, String text, double points) {
        try {
            return font.getStringWidth(printable(font, text)) / 1000 * points;
        } catch (IOException unreadable) {
            throw new IllegalStateException(unreadable);
        }
    }

    public static String printable(PDFont font, String text) {
        StringBuilder kept = new StringBuilder();
        text.codePoints().forEach(sign -> kept.append(has(font, sign) ? Character.toString(sign) : "?"));
        return kept.toString();
    }

    private static boolean has(PDFont font, int sign) {
        try {
            font.encode(Character.toString(sign));
            return true;
        } catch (IllegalArgumentException | IOException unknown) {
            return false;
        }
    }
}
