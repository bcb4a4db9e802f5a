package patinary.shop;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;

/**
 * What makes a password good enough: 15 characters, which NIST SP 800-63B asks of one that stands alone, and not an
 * obvious one. No rules on its composition; nothing is sent anywhere to check it.
 */
@Component
class PasswordRules {

    static final int SHORTEST = 15;
    static final int LONGEST = 200;
    private static final int FEWEST_DIFFERENT = 5;

    private final Set<String> common;

    PasswordRules() {
        ClassPathResource list = new ClassPathResource("common-passwords.txt");
        try (BufferedReader reader =
                new BufferedReader(new InputStreamReader(list.getInputStream(), StandardCharsets.UTF_8))) {
            common = reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(PasswordRules::core)
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The message that says why a password is refused; empty where it is taken. */
    Optional<String> refuse(String password, String... known) {
        String read = Normalizer.normalize(password, Normalizer.Form.NFKC);
        int length = read.codePointCount(0, read.length());
        if (length < SHORTEST) {
            return Optional.of("shop.password.error.short");
        }
        if (length > LONGEST) {
            return Optional.of("shop.password.error.long");
        }
        return isObvious(read, known) ? Optional.of("shop.password.error.obvious") : Optional.empty();
    }

    private boolean isObvious(String password, String... known) {
        String core = core(password);
        if (core.codePoints().distinct().count() < FEWEST_DIFFERENT || common.contains(core)) {
            return true;
        }
        for (String word : known) {
            String like = core(word);
            if (like.length() >= 3 && core.replace(like, "").length() < FEWEST_DIFFERENT) {
                return true;
            }
        }
        return common.stream()
                .anyMatch(word -> word.length() >= 6 && core.replace(word, "").length() < FEWEST_DIFFERENT);
    }

    private static String core(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s._-]+", "");
    }
}
