package patinary.photos;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * Tells whether a file has arrived to its end. A reader fills what is missing with grey and says nothing.
 *
 * <p>Sources: ITU-T T.81 annex B (markers of JPEG), ISO/IEC 15948 clause 5 (chunks of PNG), RFC 9649 (WebP's RIFF size).
 */
final class WholeFile {

    private static final int PNG_SIGNATURE = 8;
    private static final int PNG_OVERHEAD = 12;
    private static final int IEND = 0x49454E44;
    private static final int RIFF_HEADER = 8;

    private WholeFile() {}

    static boolean isWhole(PictureKind kind, byte[] file) {
        return switch (kind) {
            case JPEG -> jpeg(file);
            case PNG -> png(file);
            case WEBP -> webp(file);
        };
    }

    /** Walks over the segments; within a scan only the marker that ends it can follow 0xFF. */
    private static boolean jpeg(byte[] file) {
        int at = 2;
        while (at + 1 < file.length) {
            if ((file[at] & 0xFF) != 0xFF) {
                at++;
                continue;
            }
            int marker = file[at + 1] & 0xFF;
            if (marker == 0xD9) {
                return true;
            }
            if (marker == 0xFF) {
                at++;
            } else if (standsAlone(marker)) {
                at += 2;
            } else if (at + 3 < file.length) {
                at += 2 + ((file[at + 2] & 0xFF) << 8 | file[at + 3] & 0xFF);
            } else {
                return false;
            }
        }
        return false;
    }

    private static boolean standsAlone(int marker) {
        return marker == 0 || marker == 1 || marker >= 0xD0 && marker <= 0xD8;
    }

    private static boolean png(byte[] file) {
        ByteBuffer bytes = ByteBuffer.wrap(file);
        long at = PNG_SIGNATURE;
        while (at + PNG_OVERHEAD <= file.length) {
            long length = bytes.getInt((int) at) & 0xFFFFFFFFL;
            if (bytes.getInt((int) at + 4) == IEND) {
                return true;
            }
            at += PNG_OVERHEAD + length;
        }
        return false;
    }

    private static boolean webp(byte[] file) {
        long said = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).getInt(4) & 0xFFFFFFFFL;
        return said + RIFF_HEADER <= file.length;
    }
}
