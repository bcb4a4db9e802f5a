package patinary.listing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Patterns, the difference of two texts and lines of care. The worked example is that of docs/handbook/listing-texts.md. */
class PatternTest {

    private static final Map<Blank, List<String>> TRAY = Map.of(
            Blank.TITLE, List.of("Tin tray"),
            Blank.SIZE, List.of("12 x 9 x 1 in"),
            Blank.CARE, List.of("Keep it dry.", "Do not scrub."),
            Blank.TAGS, List.of("green", "tray"));

    @Test
    void theHandbooksTray() {
        String pattern =
                "{title}, one of a kind\n\nSize: {size}\nMade of: {material}\n- {care}\nWords: {tags} ({title})\n";

        assertThat(Pattern.read(pattern).fill(TRAY)).isEqualTo("""
                Tin tray, one of a kind

                Size: 12 x 9 x 1 in
                - Keep it dry.
                - Do not scrub.
                Words: green, tray (Tin tray)""");
    }

    @Test
    void blanksAreReadInAnyCaseAndUnknownOnesAreNamed() {
        assertThat(Pattern.read("{ Title }").fill(TRAY)).isEqualTo("Tin tray");
        assertThat(Pattern.unknown("{title} {colour} {} {colour} {Sise}")).containsExactly("colour", "", "Sise");
        assertThatThrownBy(() -> Pattern.read("{colour}")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatFillsABlankIsNoPattern() {
        assertThat(Pattern.read("{title}").fill(Map.of(Blank.TITLE, List.of("A {care} {colour} tray"))))
                .isEqualTo("A {care} {colour} tray");
    }

    @Test
    void aLoneBraceIsABrace() {
        assertThat(Pattern.read("{ open\n} and }{ shut").fill(TRAY)).isEqualTo("{ open\n} and }{ shut");
    }

    @Property
    void noLineOfHersIsLostAndNoBlankStays(
            @ForAll("lines") List<String> written, @ForAll("known") Map<Blank, List<String>> known) {
        String filled = Pattern.read(String.join("\n", written)).fill(known);
        List<String> lines = Arrays.asList(filled.split("\n", -1));

        assertThat(filled).doesNotContainPattern("\\{[a-z]+\\}");
        assertThat(lines.stream().filter(hers(written)::contains).toList())
                .as("every line without a blank, in order")
                .containsAll(hers(written))
                .hasSizeGreaterThanOrEqualTo(hers(written).size());
        assertThat(written.stream().filter(line -> blanks(line) > 0 && !isEmpty(line, known)))
                .as("a line whose blanks are all known is there")
                .allSatisfy(line -> assertThat(lines)
                        .anySatisfy(there -> assertThat(there).startsWith(line.substring(0, line.indexOf('{')))));
    }

    private static List<String> hers(List<String> written) {
        return written.stream().filter(line -> blanks(line) == 0).toList();
    }

    private static long blanks(String line) {
        return line.chars().filter(letter -> letter == '{').count();
    }

    private static boolean isEmpty(String line, Map<Blank, List<String>> known) {
        return Arrays.stream(Blank.values())
                .anyMatch(blank -> line.contains("{" + blank.word() + "}")
                        && known.getOrDefault(blank, List.of()).isEmpty());
    }

    @Provide
    Arbitrary<List<String>> lines() {
        Arbitrary<String> words = Arbitraries.strings().alpha().ofMinLength(1).ofMaxLength(6);
        Arbitrary<String> blank = Arbitraries.of(Blank.class).map(one -> "{" + one.word() + "}");
        return Arbitraries.oneOf(words, words, blank)
                .list()
                .ofMinSize(1)
                .ofMaxSize(4)
                .map(parts -> String.join(" ", parts))
                .list()
                .ofMinSize(1)
                .ofMaxSize(8);
    }

    @Provide
    Arbitrary<Map<Blank, List<String>>> known() {
        Arbitrary<List<String>> values = Arbitraries.strings()
                .alpha()
                .ofMinLength(1)
                .ofMaxLength(5)
                .list()
                .ofMaxSize(3);
        return Arbitraries.maps(Arbitraries.of(Blank.class), values).map(PatternTest::byBlank);
    }

    private static Map<Blank, List<String>> byBlank(Map<Blank, List<String>> known) {
        Map<Blank, List<String>> copy = new EnumMap<>(Blank.class);
        copy.putAll(known);
        return copy;
    }

    @Property
    void withoutTheLinesOfOneSideADifferenceIsTheOther(@ForAll("texts") String before, @ForAll("texts") String after) {
        List<LineDiff.Line> lines = LineDiff.between(before, after);

        assertThat(without(lines, LineDiff.Side.NEW)).isEqualTo(before.lines().collect(Collectors.joining("\n")));
        assertThat(without(lines, LineDiff.Side.OLD)).isEqualTo(after.lines().collect(Collectors.joining("\n")));
        if (before.equals(after)) {
            assertThat(lines).extracting(LineDiff.Line::side).containsOnly(LineDiff.Side.BOTH);
        }
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.of("a", "b", "c", "d")
                .list()
                .ofMinSize(1)
                .ofMaxSize(9)
                .map(lines -> String.join("\n", lines));
    }

    private static String without(List<LineDiff.Line> lines, LineDiff.Side side) {
        return lines.stream()
                .filter(line -> line.side() != side)
                .map(LineDiff.Line::text)
                .collect(Collectors.joining("\n"));
    }

    @Test
    void aDifferenceKeepsWhatIsCommon() {
        assertThat(LineDiff.between("title\nmine\ncare", "title\ncare\nnew"))
                .containsExactly(
                        new LineDiff.Line(LineDiff.Side.BOTH, "title"),
                        new LineDiff.Line(LineDiff.Side.OLD, "mine"),
                        new LineDiff.Line(LineDiff.Side.BOTH, "care"),
                        new LineDiff.Line(LineDiff.Side.NEW, "new"));
    }

    @Test
    void careIsCalledUpByWordsByCautionsAndByTheDay() throws IOException {
        CareLines lines;
        try (var table =
                Files.newBufferedReader(Path.of("db", "reference", "care-lines.csv"), StandardCharsets.UTF_8)) {
            lines = CareLines.read(table);
        }
        LocalDate day = LocalDate.of(2026, 5, 1);

        assertThat(ids(lines.of(day, List.of("Oak board"), List.of()))).containsExactly("CARE-2", "CARE-3");
        assertThat(ids(lines.of(day, List.of("Rose transfer", "Clear wax"), List.of())))
                .contains("CARE-1", "CARE-4", "CARE-5", "CARE-10")
                .doesNotContain("CARE-13", "CARE-15");
        assertThat(ids(lines.of(day, List.of("Vase"), List.of("LEAD-7")))).contains("CARE-6");
        assertThat(ids(lines.of(day, List.of("Milk paint, powder"), List.of()))).contains("CARE-15", "CARE-7");
        assertThat(lines.of(LocalDate.of(2025, 12, 31), List.of("Rose transfer"), List.of()))
                .isEmpty();
    }

    private static List<String> ids(List<CareLine> lines) {
        return lines.stream().map(CareLine::id).toList();
    }
}
