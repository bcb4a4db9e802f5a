package patinary.salestax;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What a period comes to by place. Every amount of tax that is owed is a posting, so the last column adds up to the account
 * of sales tax due at the end of the period; a property test holds it to that.
 */
record TaxReport(Period period, List<TaxLine> lines, TaxLine total) {

    /**
     * A payment that says what it settles.
     *
     * @param settledMinor what was paid and what was kept as allowance
     */
    record Settlement(UUID documentId, UUID taxPlaceId, LocalDate coversFrom, LocalDate coversTo, long settledMinor) {}

    /** What of an account was there before, by place. */
    record Before(@Nullable UUID taxPlaceId, long dueMinor) {}

    static TaxReport of(
            Period period, Collection<TaxRow> rows, Collection<Before> before, Collection<Settlement> settlements) {
        Map<UUID, List<TaxRow>> byPlace = rows.stream()
                .filter(row -> period.holds(row.docDate(), row.docDate()))
                .collect(Collectors.groupingBy(TaxRow::place));
        Map<UUID, Amount> owedBefore = before.stream()
                .collect(Collectors.groupingBy(
                        one -> one.taxPlaceId() == null ? TaxRow.NO_PLACE : one.taxPlaceId(),
                        Collectors.mapping(one -> Amount.of(one.dueMinor()), Amount.sum())));
        Map<UUID, Amount> settled = settlements.stream()
                .filter(one -> period.holds(one.coversFrom(), one.coversTo()))
                .collect(Collectors.groupingBy(
                        Settlement::taxPlaceId,
                        Collectors.mapping(one -> Amount.of(one.settledMinor()), Amount.sum())));
        Set<UUID> places = new TreeSet<>(Comparator.comparing(UUID::toString));
        places.addAll(byPlace.keySet());
        places.addAll(owedBefore.keySet());
        places.addAll(settled.keySet());
        List<TaxLine> lines = places.stream()
                .map(place -> TaxLine.of(
                        place,
                        byPlace.getOrDefault(place, List.of()),
                        owedBefore.getOrDefault(place, Amount.ZERO),
                        settled.getOrDefault(place, Amount.ZERO)))
                .filter(line -> !line.isEmpty())
                .toList();
        return new TaxReport(period, lines, TaxLine.total(lines));
    }
}
