package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * For how many more pieces the supplies on the bench are enough, by the finish that such pieces had most often.
 *
 * @param pieces that had it
 * @param enoughFor whole pieces; null where the finish goes by area and the kind has none
 * @param shortOf the supplies of which there is not enough for one
 */
record Readiness(
        UUID finish, String name, long pieces, @Nullable Integer enoughFor, List<String> shortOf) {

    private static final int MOST = 999;

    /** One supply of a finish of a kind and style; quantities in its base unit. */
    record Need(
            UUID finishId,
            String finish,
            @Nullable UUID kindId,
            @Nullable UUID styleId,
            long pieces,
            String supply,
            @Nullable BigDecimal needed,
            BigDecimal onBench) {}

    private record Key(@Nullable UUID kind, @Nullable UUID style) {}

    /** By kind and style. */
    static Map<PayRow.Group, Readiness> of(List<Need> needs, Iterable<PayRow.Group> groups) {
        Map<Key, Map<UUID, List<Need>>> byGroup = new LinkedHashMap<>();
        needs.forEach(
                need -> byGroup.computeIfAbsent(new Key(need.kindId(), need.styleId()), key -> new LinkedHashMap<>())
                        .computeIfAbsent(need.finishId(), finish -> new ArrayList<>())
                        .add(need));
        Map<PayRow.Group, Readiness> ready = new LinkedHashMap<>();
        groups.forEach(group -> {
            Map<UUID, List<Need>> finishes = byGroup.get(new Key(group.kindId(), group.styleId()));
            if (finishes != null) {
                finishes.values().stream()
                        .map(Readiness::of)
                        .max(Comparator.comparing(Readiness::pieces)
                                .thenComparing(Readiness::name, Comparator.reverseOrder()))
                        .ifPresent(most -> ready.put(group, most));
            }
        });
        return ready;
    }

    private static Readiness of(List<Need> needs) {
        Need any = needs.get(0);
        boolean known = needs.stream().allMatch(need -> need.needed() != null);
        int enough = needs.stream().mapToInt(Readiness::enough).min().orElse(0);
        List<String> shortOf = needs.stream()
                .filter(need -> need.needed() != null && enough(need) < 1)
                .map(Need::supply)
                .sorted()
                .toList();
        return new Readiness(any.finishId(), any.finish(), any.pieces(), known ? enough : null, shortOf);
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
