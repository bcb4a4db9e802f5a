package patinary.labels;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page of a file as a printer of 300 dots per inch sets it, to be looked at by machine. */
final class PrintedPage {

    static final double DOTS_PER_MM = 300 / 25.4;

    private final BufferedImage picture;

    private PrintedPage(BufferedImage picture) {
        this.picture = picture;
    }

    static PrintedPage of(byte[] file, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return new PrintedPage(new PDFRenderer(document).renderImageWithDPI(page, 300, ImageType.GRAY));
        }
    }

    static int pages(byte[] file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file)) {
            return document.getNumberOfPages();
        }
    }

    double width() {
        return picture.getWidth() / DOTS_PER_MM;
    }

    double height() {
        return picture.getHeight() / DOTS_PER_MM;
    }

    /** What a scanner reads in this cell and nowhere else; its points are in dots from the cell's corner. */
    Optional<Result> read(LabelGrid.Cell cell) {
        BufferedImage part = part(cell);
        int[] dots = part.getRGB(0, 0, part.getWidth(), part.getHeight(), null, 0, part.getWidth());
        BinaryBitmap bitmap =
                new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(part.getWidth(), part.getHeight(), dots)));
        try {
            return Optional.of(new QRCodeReader().decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true)));
        } catch (NotFoundException nothing) {
            return Optional.empty();
        } catch (ReaderException unreadable) {
            throw new AssertionError("a square that cannot be read", unreadable);
        }
    }

    /** Whether nothing at all is printed in the cell. */
    boolean isBlank(LabelGrid.Cell cell) {
        BufferedImage part = part(cell);
        for (int dot : part.getRGB(0, 0, part.getWidth(), part.getHeight(), null, 0, part.getWidth())) {
            if ((dot & 0xFF) < 0xF0) {
                return false;
            }
        }
        return true;
    }

    /** Whether something dark is within a fifth of a millimetre of a point. */
    boolean isDarkNear(double left, double top) {
        int reach = (int) Math.round(0.2 * DOTS_PER_MM);
        int x = (int) Math.round(left * DOTS_PER_MM);
        int y = (int) Math.round(top * DOTS_PER_MM);
        for (int column = Math.max(0, x - reach); column <= Math.min(picture.getWidth() - 1, x + reach); column++) {
            for (int row = Math.max(0, y - reach); row <= Math.min(picture.getHeight() - 1, y + reach); row++) {
                if ((picture.getRGB(column, row) & 0xFF) < 0xA0) {
                    return true;
                }
            }
        }
        return false;
    }

    BufferedImage picture() {
        return picture;
    }

    private BufferedImage part(LabelGrid.Cell cell) {
        int left = dots(cell.left().doubleValue());
        int top = dots(cell.top().doubleValue());
        int right =
                Math.min(picture.getWidth(), dots(cell.left().add(cell.width()).doubleValue()));
        int foot =
                Math.min(picture.getHeight(), dots(cell.top().add(cell.height()).doubleValue()));
        return picture.getSubimage(left, top, right - left, foot - top);
    }

    private static int dots(double millimetres) {
        return (int) Math.round(millimetres * DOTS_PER_MM);
    }
}
