package patinary.insight;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import patinary.survival.Holm;
import patinary.survival.LogRank;
import patinary.survival.Stay;

/**
 * How fast groups sell, each beside the rest of the shop. A difference is told only where both sides have five pieces and five sales
 * could be expected of each, and only where it would come up by chance in less than one of twenty shops, all the comparisons
 * of the page together (Holm).
 *
 * @param rows the groups by name, the one without a name last
 * @param whole the whole shop
 */
record SpeedTable(List<Speed> rows, Speed whole) {

    static final int FEWEST = 5;

    /**
     * Less than one of twenty, as the chance by chi-square is somewhat too small where a group is small beside the rest: with this
     * bound made-up shops of like groups hold the promise (docs/handbook/how-good-the-figures-are.md).
     */
    private static final double SELDOM = 0.03;

    /** @param groups the names of the groups that a round belongs to */
    static SpeedTable of(List<Round> rounds, Function<Round, ? extends Collection<String>> groups) {
        Map<String, BitSet> members = new TreeMap<>(Comparator.comparing(String::isEmpty)
                .thenComparing(String.CASE_INSENSITIVE_ORDER)
                .thenComparing(Comparator.naturalOrder()));
        for (int i = 0; i < rounds.size(); i++) {
            for (String name : groups.apply(rounds.get(i))) {
                members.computeIfAbsent(name, n -> new BitSet()).set(i);
            }
        }
        Map<String, List<Round>> own = new LinkedHashMap<>();
        Map<String, List<Round>> rest = new HashMap<>();
        members.forEach((name, those) -> {
            own.put(name, part(rounds, those, true));
            rest.put(name, part(rounds, those, false));
        });
        Map<String, Speed.Verdict> verdicts = verdicts(own, rest);
        List<Speed> rows = own.entrySet().stream()
                .map(group -> Speed.of(group.getKey(), group.getValue(), verdicts.get(group.getKey())))
                .toList();
        return new SpeedTable(rows, Speed.of("", rounds, null));
    }

    /** The rounds of a group, or those of the rest, in their order. */
    private static List<Round> part(List<Round> rounds, BitSet members, boolean own) {
        List<Round> part = new ArrayList<>();
        for (int i = 0; i < rounds.size(); i++) {
            if (members.get(i) == own) {
                part.add(rounds.get(i));
            }
        }
        return List.copyOf(part);
    }

    private static Map<String, Speed.Verdict> verdicts(
            Map<String, List<Round>> groups, Map<String, List<Round>> rests) {
        Map<String, Speed.Verdict> verdicts = new HashMap<>();
        List<String> told = new ArrayList<>();
        List<LogRank> tests = new ArrayList<>();
        groups.forEach((name, rounds) -> {
            List<Stay> own = Speed.stays(rounds);
            List<Stay> rest = Speed.stays(rests.getOrDefault(name, List.of()));
            LogRank test = LogRank.of(List.of(own, rest));
            if (own.size() < FEWEST || rest.size() < FEWEST || !enough(test)) {
                verdicts.put(name, Speed.Verdict.FEW);
            } else {
                told.add(name);
                tests.add(test);
            }
        });
        double[] chances =
                Holm.adjust(tests.stream().mapToDouble(LogRank::chance).toArray());
        for (int i = 0; i < chances.length; i++) {
            verdicts.put(told.get(i), verdict(tests.get(i), chances[i]));
        }
        return verdicts;
    }

    private static boolean enough(LogRank test) {
        return test.expected().stream().allMatch(expected -> expected >= FEWEST);
    }

    private static Speed.Verdict verdict(LogRank test, double chance) {
        if (chance >= SELDOM) {
            return Speed.Verdict.ALIKE;
        }
        return test.sold().get(0) > test.expected().get(0) ? Speed.Verdict.FASTER : Speed.Verdict.SLOWER;
    }
}
