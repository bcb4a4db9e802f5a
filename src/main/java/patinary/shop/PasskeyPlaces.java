package patinary.shop;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import patinary.web.Host;

/**
 * Where passkeys work: at the machine itself, and by HTTPS under the names that the shop was started with. A passkey is bound to the
 * name in the address line, so the name is never taken from a request alone: whoever can send any name could then have keys of
 * another place accepted.
 */
@Component("passkeyPlaces")
class PasskeyPlaces {

    private static final String HERE = "localhost";

    /** An address of digits is no name; browsers bind no passkey to one. */
    private static final Pattern NAME = Pattern.compile("[a-z0-9-]+(\\.[a-z0-9-]+)*\\.?[a-z][a-z0-9-]*");

    /**
     * A place.
     *
     * @param name what a passkey is bound to
     * @param origin the whole beginning of the address, as the browser signs it
     */
    record Place(String name, String origin) {}

    private final Set<String> names = new HashSet<>();

    /**
     * @param own the names of HTTPS of the shop's own
     * @param proxied the names under which a proxy with HTTPS leads here
     */
    PasskeyPlaces(@Value("${patinary.https.names:}") String own, @Value("${patinary.passkeys.names:}") String proxied) {
        for (String list : new String[] {own, proxied}) {
            Arrays.stream(list.split(","))
                    .map(name -> name.strip().toLowerCase(Locale.ROOT))
                    .filter(name -> NAME.matcher(name).matches())
                    .forEach(names::add);
        }
    }

    /** Whether passkeys work at the address of the page that is being drawn. */
    public boolean isHere() {
        return of(((ServletRequestAttributes) RequestContextHolder.currentRequestAttributes()).getRequest())
                .isPresent();
    }

    /** The place under which a request came, or nothing where passkeys do not work. */
    Optional<Place> of(HttpServletRequest request) {
        return of(request.getScheme(), request.getServerName(), request.getServerPort());
    }

    Optional<Place> of(String scheme, String host, int port) {
        String name = host.toLowerCase(Locale.ROOT);
        boolean known = name.equals(HERE) || scheme.equals("https") && names.contains(name);
        if (!known || !scheme.equals("https") && !Host.isThisMachine(name)) {
            return Optional.empty();
        }
        boolean usual = port == (scheme.equals("https") ? 443 : 80);
        return Optional.of(new Place(name, scheme + "://" + name + (usual ? "" : ":" + port)));
    }
}
