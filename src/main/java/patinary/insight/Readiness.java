package patinary.insight;

import static java.util.stream.Collectors.toMap;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * For how many more pieces the supplies on the bench are enough, by a finish that such pieces had.
 *
 * @param pieces that had it
 * @param enoughFor whole pieces; null where the finish goes by area and a kind of them has none
 * @param shortOf the supplies of which there is not enough for one
 */
record Readiness(
        UUID finish, String name, long pieces, @Nullable Integer enoughFor, List<String> shortOf) {

    /** So many finishes of a group are told: those that most of its pieces had. */
    static final int TOLD = 3;

    private static final int MOST = 999;

    private static final Comparator<Readiness> USUAL_FIRST =
            Comparator.comparing(Readiness::pieces).reversed().thenComparing(Readiness::name);

    /** One supply of a finish of a kind and style; quantities in its base unit. */
    record Need(
            UUID finishId,
            String finish,
            @Nullable UUID kindId,
            @Nullable UUID styleId,
            long pieces,
            UUID supplyId,
            String supply,
            @Nullable BigDecimal needed,
            BigDecimal onBench) {

        private Key cell() {
            return new Key(kindId, styleId);
        }

        /** Of two of the same supply the one that takes more, or of which it is not known. */
        private Need greater(Need other) {
            if (needed == null || other.needed == null) {
                return needed == null ? this : other;
            }
            return needed.compareTo(other.needed) < 0 ? other : this;
        }
    }

    private record Key(@Nullable UUID kind, @Nullable UUID style) {

        private Key on(Together level) {
            return new Key(level == Together.STYLE ? null : kind, level == Together.KIND ? null : style);
        }
    }

    /** @param level what the groups are brought together by: of kinds of several sizes the one that takes most is reckoned with */
    static Map<PayRow.Group, List<Readiness>> of(List<Need> needs, Iterable<PayRow.Group> groups, Together level) {
        Map<Key, Map<UUID, List<Need>>> byGroup = new LinkedHashMap<>();
        needs.forEach(need -> byGroup.computeIfAbsent(need.cell().on(level), key -> new LinkedHashMap<>())
                .computeIfAbsent(need.finishId(), finish -> new ArrayList<>())
                .add(need));
        Map<PayRow.Group, List<Readiness>> ready = new LinkedHashMap<>();
        groups.forEach(group -> {
            Map<UUID, List<Need>> finishes = byGroup.get(new Key(group.kindId(), group.styleId()));
            if (finishes != null) {
                ready.put(
                        group,
                        finishes.values().stream()
                                .map(Readiness::of)
                                .sorted(USUAL_FIRST)
                                .limit(TOLD)
                                .toList());
            }
        });
        return ready;
    }

    private static Readiness of(List<Need> ofFinish) {
        Need any = ofFinish.get(0);
        long pieces = ofFinish.stream().collect(toMap(Need::cell, Need::pieces, (one, other) -> one)).values().stream()
                .mapToLong(Long::longValue)
                .sum();
        Collection<Need> needs = ofFinish.stream()
                .collect(toMap(Need::supplyId, Function.identity(), Need::greater))
                .values();
        boolean known = needs.stream().allMatch(need -> need.needed() != null);
        int enough = needs.stream().mapToInt(Readiness::enough).min().orElse(0);
        List<String> shortOf = needs.stream()
                .filter(need -> need.needed() != null && enough(need) < 1)
                .map(Need::supply)
                .sorted()
                .toList();
        return new Readiness(any.finishId(), any.finish(), pieces, known ? enough : null, shortOf);
    }

    private static int enough(Need need) {
        BigDecimal needed = need.needed();
        if (needed == null || needed.signum() <= 0) {
            return MOST;
        }
        return need.onBench()
                .max(BigDecimal.ZERO)
                .divide(needed, 0, RoundingMode.FLOOR)
                .min(BigDecimal.valueOf(MOST))
                .intValueExact();
    }
}
