package patinary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** docs/security.md says something of every requirement of levels 1 and 2, once, and names tests that there are. */
class SecurityTableTest {

    private static final Path PAGE = Path.of("docs", "security.md");
    private static final Pattern ROW = Pattern.compile("^\\| (V?[0-9.]+) \\| ([12, ]+) \\|(.*)$", Pattern.MULTILINE);
    private static final Pattern TEST = Pattern.compile("`([A-Z]\\w+(?:Test|IT))`");

    /**
     * The levels of all requirements of OWASP ASVS 5.0.0, section by section: the first digit is that of its requirement 1. The
     * standard counts 70 of level 1, 183 of level 2 and 92 of level 3.
     */
    private static final String LEVELS = """
            1.1 22
            1.2 1111122223
            1.3 112222222223
            1.4 222
            1.5 123
            2.1 122
            2.2 112
            2.3 12223
            2.4 23
            3.1 3
            3.2 113
            3.3 12223
            3.4 11222233
            3.5 11122333
            3.6 3
            3.7 22333
            4.1 12233
            4.2 23333
            4.3 22
            4.4 1222
            5.1 2
            5.2 112333
            5.3 113
            5.4 222
            6.1 122
            6.2 111111112222
            6.3 11223333
            6.4 112233
            6.5 22222333
            6.6 2223
            6.7 33
            6.8 2222
            7.1 222
            7.2 1111
            7.3 22
            7.4 11222
            7.5 223
            7.6 22
            8.1 1233
            8.2 1123
            8.3 133
            8.4 23
            9.1 111
            9.2 1222
            10.1 22
            10.2 223
            10.3 22223
            10.4 1111122222233333
            10.5 22222
            10.6 22
            10.7 222
            11.1 2233
            11.2 22233
            11.3 11233
            11.4 1222
            11.5 23
            11.6 23
            11.7 33
            12.1 12233
            12.2 11
            12.3 22223
            13.1 2333
            13.2 222223
            13.3 2233
            13.4 1222233
            14.1 22
            14.2 12223333
            14.3 122
            15.1 12233
            15.2 12233
            15.3 1222222
            15.4 3333
            16.1 2
            16.2 22222
            16.3 2222
            16.4 222
            16.5 2223
            17.1 23
            17.2 22223333
            17.3 22
            """;

    @Test
    void everyRequirementOfTheFirstTwoLevelsStandsThereOnceWithItsLevel() throws IOException {
        Map<String, Integer> asked = asked();
        List<String> faults = new ArrayList<>();
        Set<String> said = new TreeSet<>();
        Matcher row = ROW.matcher(Files.readString(PAGE));
        while (row.find()) {
            String name = row.group(1);
            List<String> covered = asked.keySet().stream()
                    .filter(one -> name.startsWith("V") ? one.startsWith(name.substring(1) + ".") : one.equals(name))
                    .filter(one -> asked.get(one) < 3)
                    .toList();
            String levels = covered.stream()
                    .map(asked::get)
                    .distinct()
                    .sorted()
                    .map(String::valueOf)
                    .collect(Collectors.joining(", "));
            if (covered.isEmpty() || !levels.equals(row.group(2).strip())) {
                faults.add(name + " is of level " + levels);
            }
            covered.stream().filter(one -> !said.add(one)).forEach(one -> faults.add(one + " stands there twice"));
        }
        asked.forEach((one, level) -> {
            if (level < 3 && !said.contains(one)) {
                faults.add(one + " is missing");
            }
        });
        assertThat(faults).isEmpty();
    }

    @Test
    void theLevelsAreAsManyAsTheStandardSays() {
        Map<Integer, Long> counts =
                asked().values().stream().collect(Collectors.groupingBy(level -> level, Collectors.counting()));

        assertThat(counts).isEqualTo(Map.of(1, 70L, 2, 183L, 3, 92L));
    }

    @Test
    void everyNamedTestIsThere() throws IOException {
        Set<String> there;
        try (Stream<Path> files = Files.walk(Path.of("src", "test", "java"))) {
            there = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".java"))
                    .map(name -> name.substring(0, name.length() - ".java".length()))
                    .collect(Collectors.toSet());
        }
        Set<String> named = TEST.matcher(Files.readString(PAGE))
                .results()
                .map(test -> test.group(1))
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(named).hasSizeGreaterThan(20).isSubsetOf(there);
    }

    /** Text that a person typed is never written unescaped, and the content policy has nothing to forbid. */
    @Test
    void noTemplateWritesUnescapedOrRunsScriptInThePage() throws IOException {
        Pattern forbidden = Pattern.compile(
                "th:utext|\\[\\(|th:inline|\\sstyle=|\\son[a-z]+=|<script(?![^>]*\\bth:src)|<style|javascript:|th:attr=\"[^\"]*\\bhref=");
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "resources", "templates"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Matcher here = forbidden.matcher(Files.readString(file));
                if (here.find()) {
                    found.add(file + ": " + here.group());
                }
            }
        }
        assertThat(found).isEmpty();
    }

    private static Map<String, Integer> asked() {
        Map<String, Integer> levels = new TreeMap<>();
        LEVELS.lines().forEach(line -> {
            String[] section = line.split(" ");
            for (int i = 0; i < section[1].length(); i++) {
                levels.put(section[0] + "." + (i + 1), section[1].charAt(i) - '0');
            }
        });
        return levels;
    }
}
