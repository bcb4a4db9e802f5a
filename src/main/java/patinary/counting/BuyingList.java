package patinary.counting;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.supplies.SupplyCatalog;

/** How long every supply lasts, and what to buy where. */
@Service
@Transactional(readOnly = true)
class BuyingList {

    /** What to buy at one source; of what was never bought, or bought without naming a source, id and name are null. */
    record Errand(@Nullable UUID sourceId, @Nullable String source, List<BuyRow> rows) {

        /** What the rows whose price is known come to. */
        public long aboutMinor() {
            return rows.stream()
                    .map(BuyRow::priceMinor)
                    .filter(price -> price != null)
                    .mapToLong(Long::longValue)
                    .sum();
        }
    }

    private record Asking(LocalDate today) {}

    private final Readings readings;
    private final SupplyCatalog catalog;
    private final CountFacts counts;
    private final BuyFacts facts;
    private final WaitingNeeds needs;

    BuyingList(Readings readings, SupplyCatalog catalog, CountFacts counts, BuyFacts facts, WaitingNeeds needs) {
        this.readings = readings;
        this.catalog = catalog;
        this.counts = counts;
        this.facts = facts;
        this.needs = needs;
    }

    /** All supplies that can be bought and ever came in, went out or are needed; what lasts shortest first, then what cannot be told. */
    List<BuyRow> rows(LocalDate today) {
        return readings.ahead(new Asking(today), () -> reckoned(today));
    }

    private List<BuyRow> reckoned(LocalDate today) {
        Map<UUID, List<Spans.Count>> counted = counts.counts();
        Map<UUID, List<Spans.Taken>> taken = counts.taken();
        Map<UUID, BuyFacts.Standing> standing = facts.standing(Pace.from(today));
        Map<UUID, List<Pace.Sold>> sold = facts.sold(Pace.from(today));
        Map<UUID, BuyRow.Bought> bought = facts.bought();
        Map<UUID, BuyRow.Need> need = needs.all();
        return catalog.toBuy().stream()
                .filter(supply -> standing.containsKey(supply.id())
                        || need.containsKey(supply.id())
                        || supply.facts().low() != null)
                .map(supply -> {
                    UUID id = supply.id();
                    BuyFacts.Standing stands =
                            standing.getOrDefault(id, new BuyFacts.Standing(id, BigDecimal.ZERO, today));
                    CountFacts.Facts known = new CountFacts.Facts(
                            counted.getOrDefault(id, List.of()), taken.getOrDefault(id, List.of()));
                    UseRate rate = Pace.of(supply, known, sold.getOrDefault(id, List.of()), stands.since(), today)
                            .orElse(null);
                    return BuyRow.of(
                            supply,
                            stands.quantity(),
                            rate,
                            need.getOrDefault(id, BuyRow.Need.none(id)),
                            bought.get(id));
                })
                .sorted(Comparator.comparingDouble(BuyingList::weeks))
                .toList();
    }

    /** By source, those that were named first; what is to be bought of each. */
    static List<Errand> errands(List<BuyRow> rows) {
        Map<String, List<BuyRow>> bySource = rows.stream()
                .filter(BuyRow::isWanted)
                .sorted(Comparator.comparing((BuyRow row) -> name(row).isEmpty())
                        .thenComparing(BuyingList::name, String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(row -> row.supply().title(), String.CASE_INSENSITIVE_ORDER))
                .collect(Collectors.groupingBy(BuyingList::name, LinkedHashMap::new, Collectors.toList()));
        return bySource.values().stream()
                .map(list -> {
                    BuyRow.Bought source = list.get(0).source();
                    return source == null
                            ? new Errand(null, null, list)
                            : new Errand(source.sourceId(), source.source(), list);
                })
                .toList();
    }

    private static String name(BuyRow row) {
        return row.source() == null || row.source().source() == null
                ? ""
                : row.source().source();
    }

    private static double weeks(BuyRow row) {
        UseRate.Weeks weeks = row.lasts();
        return weeks == null ? Double.MAX_VALUE : weeks.middle();
    }
}
