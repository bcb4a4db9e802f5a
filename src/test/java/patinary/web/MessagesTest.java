package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every word on a page stands in the message files, and no page brings script or style of its own. */
class MessagesTest {

    private static final Path RESOURCES = Path.of("src/main/resources");
    private static final Path SOURCES = Path.of("src/main/java/patinary");
    private static final Pattern COMMENT = Pattern.compile("<!--.*?-->", Pattern.DOTALL);
    private static final Pattern TAG = Pattern.compile("<(?:[^<>\"']|\"[^\"]*\"|'[^']*')*>");
    private static final Pattern KEY = Pattern.compile("#\\{([A-Za-z0-9._-]+)[(}]");
    private static final Pattern ARGUMENT = Pattern.compile("\\{\\d");
    private static final Pattern IN_CODE = Pattern.compile("\"((?:%s)(?:\\.[A-Za-z0-9_-]+)+)\"");
    private static final Pattern BARE_ATTRIBUTE =
            Pattern.compile("\\s(?:title|placeholder|aria-label|alt)=\"[^\"]*\\p{L}[^\"]*\"");
    private static final Pattern OWN_SCRIPT = Pattern.compile(
            "th:utext|\\[\\(|th:inline|<style|\\sstyle=|th:style|javascript:|<script(?![^>]*th:src)|\\son[a-z]+=|th:on[a-z]+=|hx-on",
            Pattern.CASE_INSENSITIVE);

    @Test
    void noTemplateHasBareText() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path template : files(RESOURCES.resolve("templates"), ".html")) {
            String markup = COMMENT.matcher(Files.readString(template)).replaceAll("");
            for (String text : TAG.split(markup)) {
                if (text.codePoints().anyMatch(Character::isLetter)) {
                    found.add(template + ": " + text.strip());
                }
            }
            collect(BARE_ATTRIBUTE, markup, template, found);
        }
        assertThat(found).isEmpty();
    }

    @Test
    void noTemplateHasScriptOrStyleOfItsOwn() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path template : files(RESOURCES.resolve("templates"), ".html")) {
            collect(OWN_SCRIPT, Files.readString(template), template, found);
        }
        assertThat(found).isEmpty();
    }

    @Test
    void everyKeyOfATemplateHasAMessage() throws IOException {
        Set<String> known = messages().keySet();
        List<String> missing = new ArrayList<>();
        for (Path template : files(RESOURCES.resolve("templates"), ".html")) {
            Matcher key =
                    KEY.matcher(COMMENT.matcher(Files.readString(template)).replaceAll(""));
            while (key.find()) {
                if (!known.contains(key.group(1))) {
                    missing.add(template + ": " + key.group(1));
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void everyKeyInTheCodeHasAMessage() throws IOException {
        Set<String> known = messages().keySet();
        Pattern inCode = Pattern.compile(IN_CODE.pattern().formatted(String.join("|", families(known))));
        List<String> missing = new ArrayList<>();
        for (Path source : files(SOURCES, ".java")) {
            Matcher key = inCode.matcher(Files.readString(source));
            while (key.find()) {
                if (!known.contains(key.group(1))) {
                    missing.add(source + ": " + key.group(1));
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void noKeyStandsInTwoFilesOrTwiceInOne() throws IOException {
        List<String> twice = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        for (Path file : english()) {
            for (String line : Files.readAllLines(file)) {
                int end = line.indexOf('=');
                if (end > 0
                        && !line.startsWith("#")
                        && !seen.add(line.substring(0, end).strip())) {
                    twice.add(file + ": " + line);
                }
            }
        }
        assertThat(twice).isEmpty();
    }

    @Test
    void everyFileOfMessagesIsRead() throws IOException {
        String settings = Files.readString(RESOURCES.resolve("application.yaml"));
        for (Path file : english()) {
            String name = file.getFileName().toString().replace(".properties", "");
            assertThat(settings).contains("messages/" + name);
        }
    }

    /** An apostrophe is doubled where a message takes arguments, or it vanishes; elsewhere two would be shown. */
    @Test
    void apostrophesAreDoubledWhereAMessageTakesArgumentsAndNowhereElse() throws IOException {
        Map<String, String> wrong = new TreeMap<>(messages());
        wrong.values().removeIf(words -> {
            boolean takesArguments = ARGUMENT.matcher(words).find();
            String others = takesArguments ? words.replace("''", "") : words.replace("''", "doubled");
            return takesArguments ? !others.contains("'") : others.equals(words);
        });
        assertThat(wrong).isEmpty();
    }

    private static void collect(Pattern pattern, String text, Path file, List<String> found) {
        Matcher match = pattern.matcher(text);
        while (match.find()) {
            found.add(file + ": " + match.group());
        }
    }

    private static Set<String> families(Set<String> keys) {
        Set<String> families = new TreeSet<>();
        keys.forEach(key -> families.add(key.substring(0, key.indexOf('.'))));
        return families;
    }

    private static TreeMap<String, String> messages() throws IOException {
        TreeMap<String, String> all = new TreeMap<>();
        for (Path file : english()) {
            Properties properties = new Properties();
            try (Reader reader = Files.newBufferedReader(file)) {
                properties.load(reader);
            }
            properties.stringPropertyNames().forEach(key -> all.put(key, properties.getProperty(key)));
        }
        return all;
    }

    /** {@code LanguagesTest} looks at those of the other languages. */
    private static List<Path> english() throws IOException {
        return files(RESOURCES.resolve("messages"), ".properties").stream()
                .filter(file -> !file.getFileName().toString().contains("_"))
                .toList();
    }

    private static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(path -> path.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }
}
