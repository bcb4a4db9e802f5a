package patinary.taxyear;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * The lines of the year before, beside those of a year: by what a line is for, not by its number.
 *
 * @param year the year before
 * @param lines its lines by meaning
 * @param gone its lines with an amount, that this year's list has no more
 * @param sameTable whether both years stand on lists whose numbers can be compared
 */
record YearBeside(int year, Map<String, YearPage.Line> lines, List<YearPage.Line> gone, boolean sameTable) {

    static YearBeside of(YearPage now, YearPage before, int year) {
        Set<String> kept = lines(now).keySet();
        Map<String, YearPage.Line> lines = lines(before);
        List<YearPage.Line> gone = before.parts().stream()
                .flatMap(part -> part.lines().stream())
                .filter(row -> row.amount() != null && !row.amount().isZero())
                .filter(row -> !kept.contains(row.line().meaning()))
                .toList();
        return new YearBeside(year, lines, gone, now.table().equals(before.table()));
    }

    private static Map<String, YearPage.Line> lines(YearPage page) {
        return page.parts().stream()
                .flatMap(part -> part.lines().stream())
                .collect(Collectors.toMap(row -> row.line().meaning(), Function.identity()));
    }

    /** What the same thing came to, or null where nothing is known of it. */
    public @Nullable Amount amount(TaxLine line) {
        YearPage.Line before = lines.get(line.meaning());
        return before == null ? null : before.amount();
    }

    /** The number under which it stood, where that was another; else empty. */
    public String movedFrom(TaxLine line) {
        YearPage.Line before = lines.get(line.meaning());
        boolean moved = sameTable && before != null && !before.line().line().equals(line.line());
        return moved ? before.line().line() : "";
    }

    /** Whether the list of the year before had no such line. */
    public boolean isFresh(TaxLine line) {
        return !lines.containsKey(line.meaning());
    }

    /** By how much it is more than the year before, below zero where less; null where neither year says anything. */
    public @Nullable Amount difference(YearPage.Line row) {
        Amount before = amount(row.line());
        Amount now = row.amount();
        if (before == null && now == null) {
            return null;
        }
        return (now == null ? Amount.ZERO : now).minus(before == null ? Amount.ZERO : before);
    }
}
