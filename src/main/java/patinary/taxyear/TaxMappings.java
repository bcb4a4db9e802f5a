package patinary.taxyear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import patinary.taxyear.TaxMapping.Goes;

/**
 * All changes of what goes on which line. In a year holds the row of that very year, or else the latest row before it that
 * holds onward, or else what was supplied.
 */
record TaxMappings(List<TaxMapping> rows) {

    /** What holds for an account and category in a year; empty where nothing was ever said. */
    Optional<TaxMapping> holding(String table, int year, String key) {
        return rows.stream()
                .filter(row -> row.isOf(table, key))
                .filter(row -> row.taxYear() == year || row.taxYear() < year && row.onward())
                .max(Comparator.comparing(TaxMapping::taxYear));
    }

    /** A supplied table with what was changed for a year. What goes nowhere has an empty meaning, which no line has. */
    TaxTable over(TaxTable supplied, int year) {
        Map<String, String> map = new HashMap<>(supplied.map());
        for (String key : keys(supplied.name())) {
            holding(supplied.name(), year, key)
                    .filter(row -> row.goes() != Goes.SUPPLIED)
                    .ifPresent(row -> map.put(key, row.meaning()));
        }
        return new TaxTable(supplied.name(), supplied.lines(), map);
    }

    /** With a change. Where it is for one year only, the years after it keep what held in them. */
    TaxMappings with(TaxMapping change) {
        List<TaxMapping> all = without(change.taxTable(), change.taxYear(), change.key());
        all.add(change);
        if (!change.onward()) {
            holding(change.taxTable(), change.taxYear(), change.key())
                    .filter(old -> old.taxYear() == change.taxYear() && old.onward())
                    .filter(old -> noneIn(change.taxYear() + 1, change))
                    .ifPresent(old -> all.add(old.in(change.taxYear() + 1, true)));
        }
        return new TaxMappings(all);
    }

    /** Without what was said in this very year: what held before holds again. */
    TaxMappings takenBack(String table, int year, String key) {
        return new TaxMappings(without(table, year, key));
    }

    /** As supplied, from a year on. */
    TaxMappings asSupplied(String table, int year) {
        TaxMappings before = new TaxMappings(rows.stream()
                .filter(row -> !row.taxTable().equals(table) || row.taxYear() < year)
                .toList());
        List<TaxMapping> all = new ArrayList<>(before.rows());
        for (String key : before.keys(table)) {
            before.holding(table, year, key)
                    .filter(row -> row.goes() != Goes.SUPPLIED)
                    .ifPresent(row -> all.add(
                            new TaxMapping(table, year, row.account(), row.category(), Goes.SUPPLIED, "", true)));
        }
        return new TaxMappings(all);
    }

    private TreeSet<String> keys(String table) {
        TreeSet<String> keys = new TreeSet<>();
        rows.stream().filter(row -> row.taxTable().equals(table)).forEach(row -> keys.add(row.key()));
        return keys;
    }

    private boolean noneIn(int year, TaxMapping like) {
        return rows.stream().noneMatch(row -> row.isOf(like.taxTable(), like.key()) && row.taxYear() == year);
    }

    private List<TaxMapping> without(String table, int year, String key) {
        Predicate<TaxMapping> same = row -> row.isOf(table, key) && row.taxYear() == year;
        return new ArrayList<>(rows.stream().filter(same.negate()).toList());
    }
}
