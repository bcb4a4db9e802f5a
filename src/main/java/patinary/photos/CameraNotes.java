package patinary.photos;

import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.webp.WebpMetadataReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The two things that are read from what a camera wrote beside the picture: how it was held, and the day. All else, the
 * place above all, is left behind.
 *
 * @param orientation 1 to 8, as Exif 2.32 (CIPA DC-008) numbers them; 1 where the camera says nothing
 * @param takenOn the day by the camera's calendar, where it is one
 */
record CameraNotes(int orientation, @Nullable LocalDate takenOn) {

    private static final CameraNotes NONE = new CameraNotes(1, null);
    private static final int DAY_LENGTH = 10;

    /** What cannot be read counts as not said: a picture is not refused for what stands beside it. */
    static CameraNotes of(PictureKind kind, byte[] file) {
        try {
            Metadata notes = read(kind, file);
            return notes == null ? NONE : new CameraNotes(orientation(notes), day(notes));
        } catch (IOException | ImageProcessingException unreadable) {
            return NONE;
        }
    }

    /** Only what is needed is read: the packed texts of a PNG could unpack to any size. */
    private static @Nullable Metadata read(PictureKind kind, byte[] file) throws IOException, ImageProcessingException {
        ByteArrayInputStream stream = new ByteArrayInputStream(file);
        return switch (kind) {
            case JPEG -> JpegMetadataReader.readMetadata(stream, List.of(new ExifReader()));
            case WEBP -> WebpMetadataReader.readMetadata(stream);
            case PNG -> null;
        };
    }

    private static int orientation(Metadata notes) {
        for (Directory directory : notes.getDirectoriesOfType(ExifDirectoryBase.class)) {
            Integer said = directory.getInteger(ExifDirectoryBase.TAG_ORIENTATION);
            if (said != null) {
                return said >= 1 && said <= 8 ? said : 1;
            }
        }
        return 1;
    }

    private static @Nullable LocalDate day(Metadata notes) {
        for (Directory directory : notes.getDirectoriesOfType(ExifDirectoryBase.class)) {
            String said = directory.getString(ExifDirectoryBase.TAG_DATETIME_ORIGINAL);
            if (said != null && said.length() >= DAY_LENGTH) {
                return day(said.substring(0, DAY_LENGTH).replace(':', '-'));
            }
        }
        return null;
    }

    private static @Nullable LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException never) {
            return null;
        }
    }
}
