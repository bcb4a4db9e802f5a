package patinary.labels;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;
import org.springframework.web.util.UriUtils;

/** Where the square on a label leads: her shop's own address and the code, or the code alone. */
@Component
class LabelAddress {

    private static final int LONGEST = 100;
    private static final String NOT_IN_A_PATH = "/\\;%?#";

    private final LabelSettings settings;

    LabelAddress(LabelSettings settings) {
        this.settings = settings;
    }

    /** Her address; before she chose one, the one by which this request came. */
    String now(HttpServletRequest request) {
        return settings.read(LabelSettings.Name.ADDRESS, of(request));
    }

    static String of(HttpServletRequest request) {
        return ServletUriComponentsBuilder.fromContextPath(request).build().toUriString();
    }

    /** Keeps an address, or none; false where the text is no address that a phone could open. */
    boolean keep(String typed) {
        String plain = typed.strip().replaceAll("/+$", "");
        if (!plain.isEmpty() && !isAddress(plain)) {
            return false;
        }
        settings.keep(LabelSettings.Name.ADDRESS, plain);
        return true;
    }

    private static boolean isAddress(String text) {
        try {
            URI address = URI.create(text);
            return text.length() <= LONGEST
                    && ("https".equals(address.getScheme()) || "http".equals(address.getScheme()))
                    && address.getHost() != null
                    && address.getQuery() == null
                    && address.getFragment() == null
                    && address.getUserInfo() == null;
        } catch (IllegalArgumentException unreadable) {
            return false;
        }
    }

    /** What the square of a piece holds. */
    static String scanned(String address, String code) {
        if (address.isEmpty()) {
            return code;
        }
        boolean path = code.chars().noneMatch(sign -> NOT_IN_A_PATH.indexOf(sign) >= 0);
        return path
                ? address + "/p/" + UriUtils.encodePathSegment(code, StandardCharsets.UTF_8)
                : address + "/p?code=" + UriUtils.encode(code, StandardCharsets.UTF_8);
    }
}
