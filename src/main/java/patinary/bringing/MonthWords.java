package patinary.bringing;

import java.text.Normalizer;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The names of the months and their short forms in English, German, French, Spanish, Italian and Dutch, from Java's own data. */
final class MonthWords {

    private static final List<String> LANGUAGES = List.of("en", "de", "fr", "es", "it", "nl");
    private static final int SHORT = 3;
    private static final Map<String, Month> WORDS = words();

    private MonthWords() {}

    static Optional<Month> read(String word) {
        return Optional.ofNullable(WORDS.get(plain(word)));
    }

    private static Map<String, Month> words() {
        Map<String, Month> words = new HashMap<>();
        for (String language : LANGUAGES) {
            for (Month month : Month.values()) {
                Locale locale = Locale.forLanguageTag(language);
                for (TextStyle style : List.of(TextStyle.FULL, TextStyle.SHORT)) {
                    words.putIfAbsent(plain(month.getDisplayName(style, locale)), month);
                }
            }
        }
        for (Month month : Month.values()) {
            words.putIfAbsent(month.name().toLowerCase(Locale.ROOT).substring(0, SHORT), month);
        }
        words.putIfAbsent("sept", Month.SEPTEMBER);
        return Map.copyOf(words);
    }

    private static String plain(String word) {
        return Normalizer.normalize(word, Normalizer.Form.NFKD)
                .replaceAll("[^\\p{L}]", "")
                .toLowerCase(Locale.ROOT);
    }
}
