package patinary.handbook;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Names of the places in one page that can be pointed to: small letters, hyphens for spaces, nothing else but letters and
 * digits. The place that comes later by the same name gets a number.
 */
final class Anchors {

    private final Set<String> taken = new HashSet<>();

    String next(String text) {
        String plain = slug(text);
        String id = plain;
        for (int number = 1; !taken.add(id); number++) {
            id = plain + "-" + number;
        }
        return id;
    }

    static String slug(String text) {
        return text.strip()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N} _-]", "")
                .replace(' ', '-');
    }
}
