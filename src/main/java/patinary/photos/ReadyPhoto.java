package patinary.photos;

import java.awt.image.BufferedImage;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A picture that can be kept: upright, in all sizes, with nothing beside it.
 *
 * @param sha256 of the full size
 * @param takenOn the day the camera says
 */
record ReadyPhoto(
        int width, int height, String sha256, @Nullable LocalDate takenOn, Map<Size, byte[]> files) {

    /** @throws RefusedPicture where the file is none of the pictures that are taken in */
    static ReadyPhoto of(byte[] file) throws RefusedPicture {
        if (file.length == 0) {
            throw new RefusedPicture("photos.error.none");
        }
        if (file.length > PictureReader.MOST_BYTES) {
            throw new RefusedPicture("photos.error.bytes", PictureReader.MOST_BYTES / 1024 / 1024);
        }
        PictureKind kind = PictureKind.of(file);
        if (!WholeFile.isWhole(kind, file)) {
            throw new RefusedPicture("photos.error.cut");
        }
        CameraNotes notes = CameraNotes.of(kind, file);
        return of(PictureReader.read(kind, file, notes.orientation()), notes.takenOn());
    }

    static ReadyPhoto of(BufferedImage picture, @Nullable LocalDate takenOn) {
        BufferedImage kept = PictureWriter.scale(picture, Size.FULL.longest());
        Map<Size, byte[]> files = new EnumMap<>(Size.class);
        for (Size size : Size.values()) {
            files.put(size, PictureWriter.write(kept, size));
        }
        byte[] full = files.get(Size.FULL);
        return new ReadyPhoto(kept.getWidth(), kept.getHeight(), sha256(full), takenOn, files);
    }

    byte[] file(Size size) {
        return files.get(size);
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("Every Java has SHA-256", impossible);
        }
    }
}
