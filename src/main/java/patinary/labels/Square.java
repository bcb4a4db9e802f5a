package patinary.labels;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * A QR code (ISO/IEC 18004): which of its modules are dark, without the blank margin around it.
 *
 * <p>Its level of correction is M (about 15%), which a label that is handled needs; the encoder takes the smallest
 * version that holds the text.
 */
final class Square {

    /** The blank margin on every side, in modules; QR code standard, as told at qrcode.com. */
    static final int QUIET = 4;

    private final ByteMatrix modules;

    private Square(ByteMatrix modules) {
        this.modules = modules;
    }

    /** @throws IllegalArgumentException where the text is too long for any QR code */
    static Square of(String text) {
        boolean plain = StandardCharsets.ISO_8859_1.newEncoder().canEncode(text);
        Map<EncodeHintType, Object> hints =
                plain ? Map.of() : Map.of(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name());
        try {
            return new Square(
                    Encoder.encode(text, ErrorCorrectionLevel.M, hints).getMatrix());
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("No QR code holds " + text.length() + " characters", tooLong);
        }
    }

    /** How many modules a side has, without the margin: 21 for version 1, four more for each further one. */
    int size() {
        return modules.getWidth();
    }

    /** How many modules a side has with the margin. */
    int sizeWithMargin() {
        return size() + 2 * QUIET;
    }

    boolean isDark(int column, int row) {
        return modules.get(column, row) == 1;
    }
}
