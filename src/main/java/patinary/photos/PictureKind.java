package patinary.photos;

import com.drew.imaging.FileType;
import com.drew.imaging.FileTypeDetector;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** The kinds of file that are taken in, told by how the file begins and never by its name. */
enum PictureKind {
    JPEG,
    PNG,
    WEBP;

    private static final int LOOKED_AT = 512;

    /** @throws RefusedPicture where the file is of another kind; says what to do where that is known */
    static PictureKind of(byte[] file) throws RefusedPicture {
        return switch (type(file)) {
            case Jpeg -> JPEG;
            case Png -> PNG;
            case WebP -> WEBP;
            case Heif, Avif, QuickTime, Mp4, Crx -> throw new RefusedPicture("photos.error.heic");
            case Pdf -> throw new RefusedPicture("photos.error.pdf");
            default -> throw new RefusedPicture(isDrawing(file) ? "photos.error.svg" : "photos.error.kind");
        };
    }

    private static FileType type(byte[] file) {
        try {
            return FileTypeDetector.detectFileType(new ByteArrayInputStream(file));
        } catch (IOException tooShort) {
            return FileType.Unknown;
        }
    }

    /** A drawing in words: it may carry script, and a browser would run it. */
    private static boolean isDrawing(byte[] file) {
        String start = new String(file, 0, Math.min(file.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
        return start.toLowerCase(Locale.ROOT).contains("<svg");
    }
}
