package patinary.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import java.util.TreeSet;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.springframework.stereotype.Component;
import patinary.photos.PhotoFolder;

/** Looks at the pictures of an archive, and brings them in. */
@Component
class PhotoImport {

    /** No picture that this program keeps is larger. */
    static final int MOST_BYTES = 16 * 1024 * 1024;

    private final PhotoFolder folder;

    PhotoImport(PhotoFolder folder) {
        this.folder = folder;
    }

    /** What is wrong with the picture of a row: the last word of a message, or nothing. */
    static String wrong(ArchiveSource source, Row row) throws IOException {
        String name = PhotoTables.file(row.word("sha256"));
        byte[] file = read(source, name);
        if (file.length > MOST_BYTES || !row.word("bytes").equals(String.valueOf(file.length))) {
            return "photo-size";
        }
        if (!Manifest.hash(new ByteArrayInputStream(file)).equals(row.word("sha256"))) {
            return "hash";
        }
        return isPicture(file, row) ? "" : "photo-kind";
    }

    /** Brings every picture in; where that fails, what came is swept away in time, because no row names it. */
    void store(ArchiveSource source, Progress progress) throws IOException {
        Set<String> names = new TreeSet<>(source.names());
        names.removeIf(name -> !PhotoTables.isFile(name));
        for (String name : names) {
            try (InputStream stream = new ByteArrayInputStream(read(source, name))) {
                folder.keep(name.substring(PhotoTables.FOLDER.length(), name.lastIndexOf('.')), stream);
            }
        }
        progress.at(PhotoTables.FOLDER, names.size());
    }

    private static byte[] read(ArchiveSource source, String name) throws IOException {
        try (InputStream stream = source.open(name)) {
            return stream.readNBytes(MOST_BYTES + 1);
        }
    }

    /** Only the head is read: the picture is not unpacked here. */
    private static boolean isPicture(byte[] file, Row row) {
        ImageReader reader = ImageIO.getImageReadersByFormatName("jpeg").next();
        try (MemoryCacheImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(file))) {
            reader.setInput(stream, true, true);
            return row.word("width").equals(String.valueOf(reader.getWidth(0)))
                    && row.word("height").equals(String.valueOf(reader.getHeight(0)));
        } catch (IOException noPicture) {
            return false;
        } finally {
            reader.dispose();
        }
    }
}
