package patinary.history;

import patinary.ledger.Trail;

/** What a change of the settings reaches. */
final class OfSettings {

    private OfSettings() {}

    static boolean is(Change change) {
        return change.kind().equals(Trail.SETTINGS);
    }

    /** Whether supplies are counted by another method. */
    static boolean changesCosting(Change change) {
        return is(change) && differs(change, "costing_method");
    }

    /** Whether it says how a sealed year is counted: what was said for it, or the table that all years are sorted by. */
    static boolean reaches(Change change, int sealedYear) {
        return is(change)
                && (differs(change, "tax_table")
                        || Differences.between(change.before(), change.after()).stream()
                                .map(row -> row.row().getOrDefault("tax_year", ""))
                                .anyMatch(year -> !year.isEmpty() && Integer.parseInt(year) <= sealedYear));
    }

    private static boolean differs(Change change, String column) {
        return Differences.between(change.before(), change.after()).stream()
                .filter(row -> row.table().equals(Trail.SETTINGS))
                .flatMap(row -> row.cells().stream())
                .anyMatch(cell -> cell.column().equals(column));
    }
}
