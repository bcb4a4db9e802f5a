package patinary.photos;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is kept of a picture file, and what is refused. */
class ReadyPhotoTest {

    /** A picture of one lossy WebP pixel; from memory, a common smallest example of the format. */
    private static final String WEBP = "UklGRiIAAABXRUJQVlA4IBYAAAAwAQCdASoBAAEADsD+JaQAA3AAAAAA";

    private static final byte[] JPEG = Pixels.jpeg(80, 40);

    /**
     * Orientation as Exif 2.32 (CIPA DC-008) table 6 defines it: where row 0 and column 0 of the stored picture are seen.
     * The stored picture is red, green / blue, white; worked by hand from the table.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 80, 40, red, green, blue, white",
        "2, 80, 40, green, red, white, blue",
        "3, 80, 40, white, blue, green, red",
        "4, 80, 40, blue, white, red, green",
        "5, 40, 80, red, blue, green, white",
        "6, 40, 80, blue, red, white, green",
        "7, 40, 80, white, green, blue, red",
        "8, 40, 80, green, white, red, blue"
    })
    void isTurnedUpright(int orientation, int width, int height, String a, String b, String c, String d)
            throws Exception {
        ReadyPhoto ready = ReadyPhoto.of(Pixels.jpegWithExif(JPEG, orientation));

        BufferedImage kept = ImageIO.read(new ByteArrayInputStream(ready.file(Size.FULL)));
        assertThat(new int[] {ready.width(), ready.height()}).containsExactly(width, height);
        assertThat(new int[] {kept.getWidth(), kept.getHeight()}).containsExactly(width, height);
        assertThat(new String[] {
                    color(kept, 1, 1), color(kept, 3, 1), color(kept, 1, 3), color(kept, 3, 3),
                })
                .containsExactly(a, b, c, d);
    }

    @Test
    void keepsTheDayAndNothingElseThatTheCameraWrote() throws Exception {
        byte[] file = Pixels.jpegWithExif(JPEG, 6);
        Metadata before = ImageMetadataReader.readMetadata(new ByteArrayInputStream(file));
        assertThat(before.getFirstDirectoryOfType(GpsDirectory.class).getGeoLocation() != null
                        || before.getFirstDirectoryOfType(GpsDirectory.class).getTagCount() == 2)
                .as("the test's own file has a place")
                .isTrue();

        ReadyPhoto ready = ReadyPhoto.of(file);

        assertThat(ready.takenOn()).isEqualTo(LocalDate.of(2025, 3, 1));
        for (Size size : Size.values()) {
            Metadata kept = ImageMetadataReader.readMetadata(new ByteArrayInputStream(ready.file(size)));
            assertThat(kept.getDirectoriesOfType(ExifDirectoryBase.class))
                    .as("%s", size)
                    .isEmpty();
            assertThat(kept.getDirectoriesOfType(GpsDirectory.class)).isEmpty();
            assertThat(new String(ready.file(size), StandardCharsets.ISO_8859_1))
                    .doesNotContain("Maker", "Exif");
        }
    }

    @Test
    void isSmallEnoughInEverySizeWhateverThePicture() throws Exception {
        ReadyPhoto ready = ReadyPhoto.of(Pixels.file(Pixels.noise(2600, 1300), "png"));

        assertThat(ready.width()).isEqualTo(2000);
        assertThat(ready.height()).isEqualTo(1000);
        assertThat(ready.file(Size.SMALL)).hasSizeLessThan(15_000);
        assertThat(ready.file(Size.MIDDLE)).hasSizeLessThanOrEqualTo(300_000);
        BufferedImage small = ImageIO.read(new ByteArrayInputStream(ready.file(Size.SMALL)));
        assertThat(small.getWidth()).isBetween(100, 320).isEqualTo(2 * small.getHeight());
    }

    @Test
    void takesPngWithSeeThroughPartsOnWhiteAndWebP() throws Exception {
        BufferedImage glass = new BufferedImage(20, 20, BufferedImage.TYPE_INT_ARGB);

        ReadyPhoto png = ReadyPhoto.of(Pixels.file(glass, "png"));
        ReadyPhoto webp = ReadyPhoto.of(Base64.getDecoder().decode(WEBP));

        BufferedImage kept = ImageIO.read(new ByteArrayInputStream(png.file(Size.FULL)));
        assertThat(new Color(kept.getRGB(10, 10))).isEqualTo(Color.WHITE);
        assertThat(webp.width()).isEqualTo(1);
        assertThat(PictureKind.of(webp.file(Size.FULL))).isEqualTo(PictureKind.JPEG);
    }

    @Test
    void refusesAPictureOfTooManyPixelsBeforeUnpackingIt() throws Exception {
        assertThat(reason(Pixels.pngClaiming(50_000, 50_000))).isEqualTo("photos.error.pixels");
        assertThat(reason(Pixels.pngClaiming(Integer.MAX_VALUE, Integer.MAX_VALUE)))
                .isEqualTo("photos.error.pixels");
        assertThat(reason(Pixels.pngClaiming(10, 10))).isEqualTo("photos.error.broken");
    }

    @Test
    void refusesWhatIsNoPictureAndSaysWhatToDo() {
        assertThat(reason(ascii("This is a text renamed to photo.jpg"))).isEqualTo("photos.error.kind");
        assertThat(reason(ascii("<?xml version='1.0'?><svg onload='x()'/>"))).isEqualTo("photos.error.svg");
        assertThat(reason(ascii("%PDF-1.7 and so on, long enough to be told"))).isEqualTo("photos.error.pdf");
        assertThat(reason(ascii("\0\0\0\u0018ftypheic\0\0\0\0heicmif1"))).isEqualTo("photos.error.heic");
        assertThat(reason(new byte[] {(byte) 0xFF, (byte) 0xD8})).isIn("photos.error.kind", "photos.error.cut");
        assertThat(reason(new byte[0])).isEqualTo("photos.error.none");
        assertThat(reason(new byte[PictureReader.MOST_BYTES + 1])).isEqualTo("photos.error.bytes");
    }

    @Test
    void refusesAFileThatWasCutOffWherever() {
        byte[] png = Pixels.file(Pixels.noise(60, 60), "png");
        byte[] jpeg = Pixels.file(Pixels.noise(60, 60), "jpeg");
        for (byte[] whole : new byte[][] {jpeg, png}) {
            for (int at : new int[] {whole.length - 2, whole.length / 2, whole.length / 4}) {
                assertThat(reason(Arrays.copyOf(whole, at))).isEqualTo("photos.error.cut");
            }
        }
        byte[] webp = Base64.getDecoder().decode(WEBP);
        assertThat(reason(Arrays.copyOf(webp, webp.length - 4))).isEqualTo("photos.error.cut");
    }

    @Test
    void keepsNothingOfASecondFileHiddenBehindThePicture() throws Exception {
        byte[] hidden = ascii("PK\u0003\u0004<script>alert(1)</script>");
        byte[] both = Arrays.copyOf(JPEG, JPEG.length + hidden.length);
        System.arraycopy(hidden, 0, both, JPEG.length, hidden.length);

        ReadyPhoto ready = ReadyPhoto.of(both);

        assertThat(new String(ready.file(Size.FULL), StandardCharsets.ISO_8859_1))
                .doesNotContain("script", "PK\u0003\u0004");
        assertThat(ready.sha256()).isEqualTo(ReadyPhoto.of(JPEG).sha256());
    }

    private static String reason(byte[] file) {
        return catchThrowableOfType(RefusedPicture.class, () -> ReadyPhoto.of(file))
                .messageKey();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    /** The color in the middle of one of the four fields; counted in quarters. */
    private static String color(BufferedImage image, int x, int y) {
        Color color = new Color(image.getRGB(image.getWidth() * x / 4, image.getHeight() * y / 4));
        boolean red = color.getRed() > 128;
        boolean green = color.getGreen() > 128;
        boolean blue = color.getBlue() > 128;
        return red && green && blue ? "white" : red ? "red" : green ? "green" : blue ? "blue" : "black";
    }
}
