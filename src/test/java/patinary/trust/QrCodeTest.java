package patinary.trust;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class QrCodeTest {

    private static final Pattern SIZE = Pattern.compile("viewBox=\"0 0 (\\d+) \\1\"");
    private static final Pattern MODULE = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z");
    private static final int SCALE = 6;

    /** The drawing itself is read back, not the matrix it was made from. */
    @Test
    void isReadBackAsTheAddress() throws Exception {
        String address = "https://workroom.local:8443/";
        String svg = QrCode.svg(address);
        Matcher size = SIZE.matcher(svg);
        assertThat(size.find()).isTrue();
        int side = Integer.parseInt(size.group(1)) * SCALE;
        int[] pixels = new int[side * side];
        Arrays.fill(pixels, 0xffffff);
        Matcher module = MODULE.matcher(svg);
        int nearestEdge = side;
        while (module.find()) {
            int x = Integer.parseInt(module.group(1));
            int y = Integer.parseInt(module.group(2));
            nearestEdge = Math.min(nearestEdge, Math.min(x, y));
            paint(pixels, side, x * SCALE, y * SCALE);
        }

        assertThat(new QRCodeReader()
                        .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels))))
                        .getText())
                .isEqualTo(address);
        assertThat(nearestEdge).as("blank margin in modules").isEqualTo(4);
    }

    private static void paint(int[] pixels, int side, int left, int top) {
        for (int y = top; y < top + SCALE; y++) {
            Arrays.fill(pixels, y * side + left, y * side + left + SCALE, 0);
        }
    }
}
