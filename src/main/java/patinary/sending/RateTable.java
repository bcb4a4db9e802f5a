package patinary.sending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import patinary.money.Amount;

/**
 * What one service takes for a parcel, by her own table. On a day all rows hold that have the latest first day until then; of those
 * that take the parcel the cheapest is meant. docs/handbook/sending.md has the example.
 */
record RateTable(List<Rate> rates) {

    /** What it costs; nothing where the table has no row for such a parcel on that day. */
    Optional<Amount> cost(LocalDate day, BigDecimal grams, Optional<BoxSize> size) {
        return holding(day).stream()
                .filter(rate -> rate.takes(grams, size))
                .map(Rate::cost)
                .min(Comparator.comparingLong(Amount::minor));
    }

    private List<Rate> holding(LocalDate day) {
        Optional<LocalDate> latest = rates.stream()
                .map(Rate::validFrom)
                .filter(from -> !from.isAfter(day))
                .max(Comparator.naturalOrder());
        return latest.map(from -> rates.stream()
                        .filter(rate -> rate.validFrom().equals(from))
                        .toList())
                .orElse(List.of());
    }
}
