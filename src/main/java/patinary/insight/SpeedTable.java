package patinary.insight;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
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
        List<Round> byDays = rounds.stream().sorted(Round.BY_DAYS).toList();
        Map<String, BitSet> members = new TreeMap<>(Names.UNNAMED_LAST);
        for (int i = 0; i < byDays.size(); i++) {
            for (String name : groups.apply(byDays.get(i))) {
                members.computeIfAbsent(name, n -> new BitSet()).set(i);
            }
        }
        Map<String, Speed.Verdict> verdicts = verdicts(byDays, members);
        List<Speed> rows = members.entrySet().stream()
                .map(group -> Speed.of(
                        group.getKey(),
                        group.getValue().stream().mapToObj(byDays::get).toList(),
                        verdicts.get(group.getKey())))
                .toList();
        return new SpeedTable(rows, Speed.of("", byDays, null));
    }

    private static Map<String, Speed.Verdict> verdicts(List<Round> rounds, Map<String, BitSet> groups) {
        Map<String, Speed.Verdict> verdicts = new HashMap<>();
        List<String> told = new ArrayList<>();
        List<LogRank> tests = new ArrayList<>();
        groups.forEach((name, members) -> {
            List<Stay> own = Speed.stays(rounds, members, true);
            List<Stay> rest = Speed.stays(rounds, members, false);
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
