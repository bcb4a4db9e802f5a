package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The colors of the style sheet against each other, by the contrast ratio of WCAG 2.2 (relative luminance of sRGB):
 * 4.5 to 1 for words (criterion 1.4.3), 3 to 1 for what marks a control or a state (1.4.11).
 */
class ContrastTest {

    private static final Path STYLE = Path.of("src/main/resources/static/css/patinary.css");
    private static final Pattern ROOT = Pattern.compile(":root \\{([^}]*)}");
    private static final Pattern TOKEN = Pattern.compile("--([a-z-]+): (#[0-9a-f]{6});");

    private static final List<String> GROUNDS = List.of("linen", "thread", "paper", "paper-deep");
    private static final List<String> WORDS =
            List.of("ink", "ink-soft", "clay", "clay-deep", "sage", "madder", "ochre");
    private static final List<String> MARKS = List.of("field-edge", "focus", "madder", "clay", "sage");

    record Pair(String scheme, String front, String back, double least, Map<String, String> tokens) {
        @Override
        public String toString() {
            return scheme + ": " + front + " on " + back + " at least " + least;
        }
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void standsOutEnough(Pair pair) {
        double ratio = ratio(color(pair, pair.front), color(pair, pair.back));
        assertThat(ratio).isGreaterThanOrEqualTo(pair.least);
    }

    static List<Pair> pairs() throws IOException {
        Matcher roots = ROOT.matcher(Files.readString(STYLE));
        assertThat(roots.find()).isTrue();
        Map<String, String> light = tokens(roots.group(1));
        assertThat(roots.find()).isTrue();
        Map<String, String> dark = new HashMap<>(light);
        dark.putAll(tokens(roots.group(1)));
        assertThat(light.keySet()).isEqualTo(dark.keySet());
        var pairs = new java.util.ArrayList<Pair>();
        addPairs(pairs, "light", light);
        addPairs(pairs, "dark", dark);
        return pairs;
    }

    private static void addPairs(List<Pair> pairs, String scheme, Map<String, String> tokens) {
        for (String ground : GROUNDS) {
            WORDS.forEach(word -> pairs.add(new Pair(scheme, word, ground, 4.5, tokens)));
            MARKS.forEach(mark -> pairs.add(new Pair(scheme, mark, ground, 3, tokens)));
        }
        pairs.add(new Pair(scheme, "on-clay", "clay", 4.5, tokens));
        pairs.add(new Pair(scheme, "on-clay", "clay-deep", 4.5, tokens));
        pairs.add(new Pair(scheme, "clay-deep", "clay-wash", 4.5, tokens));
        for (String tone : List.of("sage", "madder", "ochre")) {
            pairs.add(new Pair(scheme, tone, tone + "-wash", 4.5, tokens));
            pairs.add(new Pair(scheme, "ink", tone + "-wash", 4.5, tokens));
        }
        pairs.add(new Pair(scheme, "ink", "clay-wash", 4.5, tokens));
    }

    private static Map<String, String> tokens(String block) {
        Map<String, String> tokens = new HashMap<>();
        Matcher token = TOKEN.matcher(block);
        while (token.find()) {
            tokens.put(token.group(1), token.group(2));
        }
        return tokens;
    }

    private static String color(Pair pair, String name) {
        assertThat(pair.tokens).containsKey(name);
        return pair.tokens.get(name);
    }

    private static double ratio(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String color) {
        return 0.2126 * channel(color, 1) + 0.7152 * channel(color, 3) + 0.0722 * channel(color, 5);
    }

    private static double channel(String color, int from) {
        double value = Integer.parseInt(color.substring(from, from + 2), 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
