package patinary.web;

import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;

/** The head of an answer that a browser saves as a file, and that nothing between keeps. */
public final class SavedFile {

    public static final String ZIP = "application/zip";

    private SavedFile() {}

    /**
     * @param type its media type (RFC 6838)
     * @param name under which the browser offers to save it
     */
    public static void head(HttpServletResponse response, String type, String name) {
        response.setContentType(type);
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        response.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                ContentDisposition.attachment().filename(name).build().toString());
    }
}
