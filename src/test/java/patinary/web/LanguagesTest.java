package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever the program says in English it says in each other language, with the same values in it. */
class LanguagesTest {

    private static final Path MESSAGES = Path.of("src/main/resources/messages");
    private static final Path ALIKE = Path.of("src/test/resources/messages-alike.txt");
    private static final Pattern ARGUMENT = Pattern.compile("\\{([0-9])");
    private static final Pattern CODE = Pattern.compile("(?s)<code>.*?</code>|&[a-z]+;");

    static Stream<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(MESSAGES)) {
            return all.filter(file -> !file.getFileName().toString().contains("_")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyKeyIsThereInBoth(Path file) throws IOException {
        Set<String> missing = new TreeSet<>(read(file).keySet());
        Set<String> tooMany = new TreeSet<>(read(spanish(file)).keySet());
        Set<String> there = Set.copyOf(tooMany);
        tooMany.removeAll(missing);
        missing.removeAll(there);
        assertThat(missing).as("keys that " + spanish(file) + " lacks").isEmpty();
        assertThat(tooMany)
                .as("keys of " + spanish(file) + " that are in no English file")
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyMessageHasTheSameValuesInIt(Path file) throws IOException {
        Map<String, String> theirs = read(spanish(file));
        read(file).forEach((key, english) -> {
            String other = theirs.getOrDefault(key, "");
            assertThat(found(ARGUMENT, other)).as(key + ": " + other).isEqualTo(found(ARGUMENT, english));
            assertThat(found(CODE, other)).as(key).isEqualTo(found(CODE, english));
        });
    }

    /** A pattern that cannot be read would be an error on the page; an odd apostrophe would swallow a value. */
    @ParameterizedTest
    @MethodSource("files")
    void everyMessageCanBeFilledIn(Path file) throws IOException {
        Map<String, String> english = read(file);
        read(spanish(file)).forEach((key, text) -> {
            if (ARGUMENT.matcher(text).find()) {
                String original = english.get(key);
                for (int number : new int[] {0, 1, 2, 5}) {
                    assertThat(left(filled(text, number)))
                            .as(key + ": " + text)
                            .isEqualTo(left(filled(original, number)));
                }
            } else {
                assertThat(text).as(key).doesNotContain("''");
            }
        });
    }

    @ParameterizedTest
    @MethodSource("files")
    void noKeyStandsTwiceInAFile(Path file) throws IOException {
        List<String> keys = Files.readAllLines(spanish(file)).stream()
                .filter(line -> line.indexOf('=') > 0 && !line.startsWith("#"))
                .map(line -> line.substring(0, line.indexOf('=')).strip())
                .toList();
        assertThat(keys).doesNotHaveDuplicates();
    }

    /** What is written alike in both languages is listed, so that nothing is left in English by mistake. */
    @Test
    void nothingIsLeftInEnglish() throws IOException {
        Set<String> alike = new TreeSet<>();
        for (Path file : files().toList()) {
            Map<String, String> theirs = read(spanish(file));
            read(file).forEach((key, english) -> {
                if (english.equals(theirs.get(key)) && isWords(english)) {
                    alike.add(key);
                }
            });
        }
        assertThat(alike).isEqualTo(new TreeSet<>(Files.readAllLines(ALIKE)));
    }

    /** A percentage is written by {@link Fmt#percent}; one that stands in the words themselves is written as it would be. */
    @Test
    void percentagesAreWrittenInOneWay() throws IOException {
        Pattern english = Pattern.compile("[^0-9]%");
        Pattern theirs = Pattern.compile("(?<![0-9]\u00a0)%");
        List<String> wrong = new ArrayList<>();
        for (Path file : files().toList()) {
            found(file, english, wrong);
            found(spanish(file), theirs, wrong);
        }
        try (Stream<Path> templates = Files.walk(Path.of("src/main/resources/templates"))) {
            for (Path file : templates.filter(Files::isRegularFile).toList()) {
                if (Pattern.compile("%['<]").matcher(Files.readString(file)).find()) {
                    wrong.add(file.toString());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static void found(Path file, Pattern pattern, List<String> into) throws IOException {
        read(file).forEach((key, text) -> {
            if (pattern.matcher(text).find()) {
                into.add(file.getFileName() + ": " + key);
            }
        });
    }

    /** She is addressed as a friend would. */
    @Test
    void nobodyIsAddressedFormally() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files().toList()) {
            read(spanish(file)).forEach((key, text) -> {
                if (Pattern.compile("(?i)\\busted(es)?\\b").matcher(text).find()) {
                    found.add(key);
                }
            });
        }
        assertThat(found).isEmpty();
    }

    /** An address within the program is no words. */
    private static boolean isWords(String text) {
        return !text.startsWith("/") && text.codePoints().anyMatch(Character::isLetter);
    }

    private static String filled(String pattern, int number) {
        Object[] values = IntStream.range(0, 10).mapToObj(at -> (Object) number).toArray();
        try {
            return new MessageFormat(pattern, Locale.ENGLISH).format(values);
        } catch (IllegalArgumentException takesAText) {
            return new MessageFormat(pattern, Locale.ENGLISH)
                    .format(Stream.of(values).map(String::valueOf).toArray());
        }
    }

    /** Braces that are still there: a value that was not filled in. */
    private static List<String> left(String text) {
        return found(Pattern.compile("\\{[^{}]*\\}"), text);
    }

    private static List<String> found(Pattern pattern, String text) {
        Matcher match = pattern.matcher(text);
        return match.results().map(result -> result.group()).sorted().distinct().collect(Collectors.toList());
    }

    private static Path spanish(Path file) {
        return file.resolveSibling(file.getFileName().toString().replace(".properties", "_es.properties"));
    }

    private static Map<String, String> read(Path file) throws IOException {
        Properties properties = new Properties();
        try (Reader reader = Files.newBufferedReader(file)) {
            properties.load(reader);
        }
        Map<String, String> all = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> all.put(key, properties.getProperty(key)));
        return all;
    }
}
