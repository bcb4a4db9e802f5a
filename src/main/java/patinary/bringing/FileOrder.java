package patinary.bringing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * One order of a file: one sale with a line for each of its rows.
 *
 * @param reference the channel's own number for it
 * @param sold what its rows say, without those left out
 * @param date the day, or null where no row says it
 * @param ofOrder discount, shipping, tax, fee and total of the whole
 */
record FileOrder(
        String reference,
        List<Sheet.Row> rows,
        List<Sold> sold,
        @Nullable LocalDate date,
        Map<Meaning, Amount> ofOrder,
        List<Fault> faults) {

    private static final Pattern NUMBER_SIGN = Pattern.compile("^#\\s*");
    private static final Pattern SPACES = Pattern.compile("\\s+");

    /** What tells whether two references name the same order: a leading number sign, case and spaces do not count. */
    static String key(String reference) {
        return reference
                .strip()
                .replaceFirst("^#\\s*", "")
                .replaceAll("\\s+", " ")
                .toUpperCase(Locale.ROOT);
    }

    /** @param out the numbers of rows that are left out; what they say of the whole order still counts */
    static FileOrder of(List<RowReader.ReadRow> rows, Mapping mapping, Set<Integer> out) {
        List<Fault> faults = new ArrayList<>();
        List<Sold> all = rows.stream()
                .map(RowReader.ReadRow::sold)
                .filter(Objects::nonNull)
                .toList();
        List<Sold> kept =
                all.stream().filter(one -> !out.contains(one.row().number())).toList();
        rows.stream().filter(row -> !out.contains(row.row().number())).forEach(row -> faults.addAll(row.faults()));
        Map<Meaning, Amount> ofOrder = new EnumMap<>(Meaning.class);
        for (Meaning meaning : Meaning.values()) {
            if (meaning.isOfOrder()) {
                together(meaning, mapping.eachRow() ? kept : all, mapping.eachRow(), faults)
                        .ifPresent(amount -> ofOrder.put(meaning, amount));
            }
        }
        RowReader.ReadRow first = rows.get(0);
        boolean complete = faults.isEmpty() && !kept.isEmpty();
        return new FileOrder(
                first.reference(),
                rows.stream().map(RowReader.ReadRow::row).toList(),
                kept,
                complete ? date(first.row(), all, faults) : null,
                ofOrder,
                faults);
    }

    Amount amount(Meaning meaning) {
        return ofOrder.getOrDefault(meaning, Amount.ZERO);
    }

    /** The first of its rows that says it. */
    String text(Function<Sold, String> reading) {
        return sold.stream()
                .map(reading)
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }

    private static Optional<Amount> together(Meaning meaning, List<Sold> sold, boolean eachRow, List<Fault> faults) {
        List<Sold> saying =
                sold.stream().filter(one -> one.ofOrder().containsKey(meaning)).toList();
        if (saying.isEmpty()) {
            return Optional.empty();
        }
        Amount first = saying.get(0).ofOrder().get(meaning);
        if (eachRow) {
            return Optional.of(
                    saying.stream().map(one -> one.ofOrder().get(meaning)).collect(Amount.sum()));
        }
        saying.stream()
                .filter(one -> !one.ofOrder().get(meaning).equals(first))
                .findFirst()
                .ifPresent(other -> faults.add(Fault.of(other.row(), meaning, "differs")));
        return Optional.of(first);
    }

    private static @Nullable LocalDate date(Sheet.Row first, List<Sold> sold, List<Fault> faults) {
        Set<LocalDate> dates = new HashSet<>();
        sold.forEach(one -> Optional.ofNullable(one.date()).ifPresent(dates::add));
        if (dates.size() != 1) {
            faults.add(Fault.of(first, Meaning.DATE, dates.isEmpty() ? "no-date" : "two-dates"));
            return null;
        }
        return dates.iterator().next();
    }
}
