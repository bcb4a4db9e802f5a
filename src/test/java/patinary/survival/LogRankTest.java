package patinary.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static patinary.survival.CheckValues.assertLike;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against R's survdiff and p.adjust. */
class LogRankTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "freireich",
                "aml",
                "lung-by-sex",
                "lung-by-ecog",
                "small-3-v-4",
                "small-plus-group-with-no-expected-events"
            })
    void isTheTestOfTheReference(String example) {
        List<CSVRecord> expected = CheckValues.read("logrank-expected", "example", example);
        LogRank test = LogRank.of(groups(example, expected));

        for (int g = 0; g < expected.size(); g++) {
            CSVRecord row = expected.get(g);
            assertThat(test.sold().get(g)).isEqualTo(Integer.parseInt(row.get("observed")));
            assertLike(test.expected().get(g), row.get("expected"), "expected");
            assertLike(test.variance().get(g), row.get("variance"), "variance");
            assertLike(test.statistic(), row.get("chisq"), "chi-square");
            assertThat(test.freedom()).isEqualTo(Integer.parseInt(row.get("df")));
            assertLike(test.chance(), row.get("p_value"), "p");
        }
    }

    private static List<List<Stay>> groups(String example, List<CSVRecord> expected) {
        return expected.stream()
                .map(row -> row.get("group"))
                .map(group -> observations(example, group))
                .toList();
    }

    private static List<Stay> observations(String example, String group) {
        return switch (example) {
            case "freireich", "aml" -> CheckValues.stays(example + "-observations", group);
            case "lung-by-sex" -> CheckValues.stays("lung-observations", group);
            case "lung-by-ecog" ->
                CheckValues.read("lung-observations", "ecog", group.replace("ecog", "")).stream()
                        .map(CheckValues::stay)
                        .toList();
            default ->
                CheckValues.read("logrank-small-observations", "example", example).stream()
                        .filter(row -> row.get("group").equals(group))
                        .map(CheckValues::stay)
                        .toList();
        };
    }

    @Test
    void saysNothingOfOneGroupOrOfNoSale() {
        List<Stay> open = List.of(Stay.of(10, Exit.OPEN), Stay.of(20, Exit.OPEN));

        assertThat(LogRank.of(List.of(open)).chance()).isEqualTo(1);
        assertThat(LogRank.of(List.of(open, open)).chance()).isEqualTo(1);
        assertThat(LogRank.of(List.of()).freedom()).isZero();
    }

    /** Three against four: of the 35 divisions none differs more, so the chance is 1/35 and never less. */
    @Test
    void byShufflingFewPiecesIsExact() {
        List<Stay> one = observations("small-3-v-4", "a");
        List<Stay> other = observations("small-3-v-4", "b");

        assertThat(LabelShuffle.chance(one, other, 1)).isCloseTo(1.0 / 35, within(1e-12));
        assertThat(LabelShuffle.chance(one, one, 1)).isCloseTo(1, within(1e-12));
    }

    /**
     * Twelve against twelve alike pieces, drawn anew forty times: about two are called different at
     * 5 %; more than six would happen once in 300 times. */
    @Test
    void byShufflingManyPiecesKeepsItsPromise() {
        Random random = new Random(7);
        int called = 0;
        for (int shop = 0; shop < 40; shop++) {
            List<Stay> one = drawn(random, 12);
            List<Stay> other = drawn(random, 12);
            called += LabelShuffle.chance(one, other, shop) <= 0.05 ? 1 : 0;
        }
        assertThat(called).isLessThanOrEqualTo(6);
    }

    private static List<Stay> drawn(Random random, int pieces) {
        return IntStream.range(0, pieces)
                .mapToObj(i -> {
                    int days = (int) Math.ceil(-Math.log(1 - random.nextDouble()) * 100);
                    int age = 1 + random.nextInt(300);
                    return days <= age ? Stay.of(days, Exit.SOLD) : Stay.of(age, Exit.OPEN);
                })
                .collect(Collectors.toCollection(ArrayList::new));
    }

    @Test
    void holmAdjustsAsTheReferenceDoes() {
        for (String example : List.of("wikipedia-4", "ties-6", "single")) {
            List<CSVRecord> rows = CheckValues.read("holm-expected", "example", example);
            double[] adjusted = Holm.adjust(rows.stream()
                    .mapToDouble(row -> Double.parseDouble(row.get("p")))
                    .toArray());
            for (int i = 0; i < adjusted.length; i++) {
                assertLike(adjusted[i], rows.get(i).get("holm"), example + " " + i);
            }
        }
    }
}
