package patinary.photos;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import net.coobird.thumbnailator.Thumbnails;

/** Writes a picture as a JPEG of a size, with nothing beside the picture. */
final class PictureWriter {

    private static final float BEST = 0.86f;
    private static final float WORST = 0.5f;
    private static final float STEP = 0.12f;
    private static final double SMALLER = 0.8;

    private PictureWriter() {}

    /** A JPEG no longer than the size's longest side and no heavier than it may be: first less fine, then smaller. */
    static byte[] write(BufferedImage picture, Size size) {
        for (double longest = size.longest(); ; longest *= SMALLER) {
            BufferedImage scaled = scale(picture, (int) longest);
            for (float quality = BEST; quality > WORST; quality -= STEP) {
                byte[] jpeg = jpeg(scaled, quality);
                if (jpeg.length <= size.mostBytes()) {
                    return jpeg;
                }
            }
        }
    }

    static BufferedImage scale(BufferedImage picture, int longest) {
        if (Math.max(picture.getWidth(), picture.getHeight()) <= longest) {
            return picture;
        }
        try {
            return Thumbnails.of(picture)
                    .size(longest, longest)
                    .imageType(BufferedImage.TYPE_INT_RGB)
                    .asBufferedImage();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static byte[] jpeg(BufferedImage picture, float quality) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream stream = new MemoryCacheImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.setOutput(stream);
            writer.write(null, new IIOImage(picture, null, null), param);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
