package patinary.trust;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** An address as a picture that a phone's camera reads: QR code, margin of four modules, black on white. */
final class QrCode {

    private static final Map<EncodeHintType, Object> HINTS =
            Map.of(EncodeHintType.MARGIN, 4, EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M);

    private QrCode() {}

    static String svg(String address) {
        try {
            BitMatrix modules = new QRCodeWriter().encode(address, BarcodeFormat.QR_CODE, 0, 0, HINTS);
            return drawn(modules);
        } catch (WriterException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String drawn(BitMatrix modules) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                if (modules.get(x, y)) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" shape-rendering=\"crispEdges\">"
                        .formatted(modules.getWidth(), modules.getHeight())
                + "<path fill=\"#fff\" d=\"M0 0h%dv%dH0z\"/><path fill=\"#000\" d=\"%s\"/></svg>"
                        .formatted(modules.getWidth(), modules.getHeight(), path);
    }
}
