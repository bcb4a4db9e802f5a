package patinary.photos;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

/** Reads a file that came from outside into a bare, upright picture in the usual colors. */
final class PictureReader {

    /** How large a file may be. */
    static final int MOST_BYTES = 15 * 1024 * 1024;

    /** How many pixels a picture may have; asked of the file's head, before any of them is unpacked. */
    static final long MOST_PIXELS = 50_000_000;

    /** Beyond this, only every second pixel, every third and so on is read: no picture fills the memory. */
    private static final int READ_LONGEST = 2 * 2000;

    private PictureReader() {}

    /** @throws RefusedPicture where the file is no picture that is taken in */
    static BufferedImage read(PictureKind kind, byte[] file, int orientation) throws RefusedPicture {
        try (MemoryCacheImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            ImageReader reader = reader(kind);
            try {
                reader.setInput(stream, true, true);
                return upright(flat(reader.read(0, param(reader))), orientation);
            } finally {
                reader.dispose();
            }
        } catch (IOException
                | IllegalArgumentException
                | IndexOutOfBoundsException
                | NegativeArraySizeException broken) {
            throw new RefusedPicture("photos.error.broken");
        }
    }

    private static ImageReadParam param(ImageReader reader) throws IOException, RefusedPicture {
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        if (width < 1 || height < 1 || width * height > MOST_PIXELS) {
            throw new RefusedPicture("photos.error.pixels", MOST_PIXELS / 1_000_000);
        }
        int step = (int) Math.max(1, Math.max(width, height) / READ_LONGEST);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(step, step, 0, 0);
        return param;
    }

    private static ImageReader reader(PictureKind kind) throws IOException {
        return switch (kind) {
            case JPEG -> ImageIO.getImageReadersByFormatName("jpeg").next();
            case PNG -> ImageIO.getImageReadersByFormatName("png").next();
            case WEBP -> new WebPImageReaderSpi().createReaderInstance(null);
        };
    }

    /** Red, green and blue on white: whatever the file's own colors and see-through parts were. */
    private static BufferedImage flat(BufferedImage image) {
        BufferedImage flat = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = flat.createGraphics();
        canvas.drawImage(image, 0, 0, Color.WHITE, null);
        canvas.dispose();
        return flat;
    }

    private static BufferedImage upright(BufferedImage image, int orientation) {
        return orientation == 1
                ? image
                : ExifFilterUtils.getFilterForOrientation(Orientation.typeOf(orientation))
                        .apply(image);
    }
}
