package patinary.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What the name in an address line tells of the way to the shop. */
public final class Host {

    private static final Pattern LITERAL = Pattern.compile("[0-9.]+|\\[?[0-9a-f.]*:[0-9a-f:.]*]?");
    private static final Pattern LOOPBACK =
            Pattern.compile("localhost|.+\\.localhost|127(\\.[0-9]+){3}|\\[?(0*:)*:?0*1]?");
    /** Names that only a house's own network knows (RFC 6762, RFC 8375, RFC 6761, and what routers use). */
    private static final List<String> OF_THE_HOUSE =
            List.of(".local", ".home.arpa", ".internal", ".lan", ".home", ".test", ".localhost");

    private Host() {}

    /** Whether the name means the machine itself; browsers treat that as secure also without encryption. */
    public static boolean isThisMachine(String name) {
        return LOOPBACK.matcher(name.toLowerCase(Locale.ROOT)).matches();
    }

    /** Whether no public authority could vouch for the name. */
    public static boolean isLocal(String name) {
        String low = name.toLowerCase(Locale.ROOT);
        return !low.contains(".")
                || LITERAL.matcher(low).matches()
                || OF_THE_HOUSE.stream().anyMatch(low::endsWith);
    }

    /** Whether a browser denies the page what needs a secure way: working without reception, camera, passkeys. */
    public static boolean isPlain(HttpServletRequest request) {
        return !request.isSecure() && !isThisMachine(request.getServerName());
    }
}
