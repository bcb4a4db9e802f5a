package patinary.photos;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Gives a photo's file in a size, and makes the smaller sizes again where they are missing, as after a restore. */
@Component
class PhotoFiles {

    private final PhotoFolder folder;
    private final ImageWork work;

    PhotoFiles(PhotoFolder folder, ImageWork work) {
        this.folder = folder;
        this.work = work;
    }

    /** The file, or nothing where the kept one is missing or broken. */
    Optional<Path> find(String sha256, Size size) {
        Optional<Path> there = folder.find(sha256, size);
        return there.isPresent() || size == Size.FULL ? there : made(sha256, size);
    }

    private Optional<Path> made(String sha256, Size size) {
        Optional<Path> full = folder.full(sha256);
        if (full.isEmpty()) {
            return Optional.empty();
        }
        try {
            byte[] file = Files.readAllBytes(full.get());
            folder.keep(sha256, size, work.run(() -> smaller(file, size)));
            return folder.find(sha256, size);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        } catch (RefusedPicture broken) {
            return Optional.empty();
        }
    }

    private static byte[] smaller(byte[] full, Size size) throws RefusedPicture {
        BufferedImage picture = PictureReader.read(PictureKind.JPEG, full, 1);
        return PictureWriter.write(picture, size);
    }
}
