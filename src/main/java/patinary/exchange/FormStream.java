package patinary.exchange;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.apache.tomcat.util.http.fileupload.FileItemIterator;
import org.apache.tomcat.util.http.fileupload.FileItemStream;
import org.apache.tomcat.util.http.fileupload.FileUpload;
import org.apache.tomcat.util.http.fileupload.servlet.ServletRequestContext;
import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.multipart.support.MissingServletRequestPartException;

/**
 * A form with one file, read as it comes. Its fields stand before the file: few and short, they are read into memory by whoever
 * asks first, which is the guard against forged forms. The file stays unread until somebody takes it, and is stored nowhere here.
 */
final class FormStream {

    private static final int MOST_FIELDS = 8;
    private static final int LONGEST_FIELD = 4096;

    private final HttpServletRequest request;
    private @Nullable Map<String, String> fields;
    private @Nullable FileItemStream file;

    FormStream(HttpServletRequest request) {
        this.request = request;
    }

    /** The fields before the file. None where they could not be read: that was said to whoever asked first. */
    synchronized Map<String, String> fields() {
        if (fields == null) {
            fields = Map.of();
            try {
                fields = read(new FileUpload().getItemIterator(new ServletRequestContext(request)));
            } catch (IOException broken) {
                throw new InvalidParameterException("The form breaks off or is none", broken);
            }
        }
        return fields;
    }

    /** The file of that field, to be read once. */
    InputStream file(String field) throws IOException, MissingServletRequestPartException {
        try {
            fields();
            if (file == null || !file.getFieldName().equals(field)) {
                throw new MissingServletRequestPartException(field);
            }
            return file.openStream();
        } catch (InvalidParameterException broken) {
            throw new MultipartException("The form breaks off or is none", broken);
        }
    }

    private Map<String, String> read(FileItemIterator parts) throws IOException {
        Map<String, String> read = new LinkedHashMap<>();
        while (parts.hasNext()) {
            FileItemStream part = parts.next();
            if (!part.isFormField()) {
                file = part;
                return read;
            }
            if (read.size() == MOST_FIELDS) {
                throw new InvalidParameterException("More fields than this form has");
            }
            read.putIfAbsent(part.getFieldName(), text(part));
        }
        return read;
    }

    private static String text(FileItemStream part) throws IOException {
        try (InputStream stream = part.openStream()) {
            byte[] bytes = stream.readNBytes(LONGEST_FIELD + 1);
            if (bytes.length > LONGEST_FIELD) {
                throw new InvalidParameterException("A longer field than this form has");
            }
            return new String(bytes, StandardCharsets.UTF_8);
        }
    }
}
