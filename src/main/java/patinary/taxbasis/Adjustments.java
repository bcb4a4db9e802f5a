package patinary.taxbasis;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * The adjustments of one year, from the differences at its two ends. With D(y) the difference at the end of year y as y is
 * counted, profit for tax = profit by the books + D(y) − D(y − 1); so over any years nothing counts twice or never.
 *
 * @param was how the year before was counted
 * @param is how this year is counted
 */
public record Adjustments(TaxBasis was, TaxBasis is, List<Adjustment> rows) {

    private record Key(Reason reason, String category, String kind, String subject) {
        static Key of(Difference difference) {
            return new Key(
                    difference.reason(),
                    difference.category(),
                    difference.subject().kind(),
                    difference.subject().key());
        }
    }

    /**
     * Sets the differences of two days beside each other; what neither way of counting feels is left out.
     *
     * @param before at the end of the year before
     * @param after at the end of the year
     */
    static Adjustments of(Collection<Difference> before, Collection<Difference> after, TaxBasis was, TaxBasis is) {
        Map<Key, Difference> first = byKey(before);
        Map<Key, Difference> last = byKey(after);
        Map<Key, Difference> all = new LinkedHashMap<>(first);
        all.putAll(last);
        List<Adjustment> rows = new ArrayList<>();
        all.forEach((key, about) -> rows.add(new Adjustment(
                about.reason(),
                about.category(),
                about.subject(),
                under(first.get(key), was),
                under(first.get(key), is),
                under(last.get(key), is))));
        return new Adjustments(
                was, is, rows.stream().filter(Adjustment::isAnything).toList());
    }

    /** What is added to the year's profit by the books. */
    public Amount profit() {
        return sum(row -> true, Adjustment::profit);
    }

    /** What the change of the way of counting brings. */
    public Amount opening() {
        return sum(row -> true, Adjustment::opening);
    }

    /** What happened within the year. */
    public Amount within() {
        return sum(row -> true, Adjustment::within);
    }

    /** D of the year before: how far tax was ahead of the books. */
    public Amount before() {
        return sum(row -> true, Adjustment::before);
    }

    /** D of this year. */
    public Amount after() {
        return sum(row -> true, Adjustment::after);
    }

    /** One of the sums above for some rows only, for instance those of stock. */
    public Amount sum(Predicate<Adjustment> which, Function<Adjustment, Amount> what) {
        return rows.stream().filter(which).map(what).collect(Amount.sum());
    }

    /** The reasons in their order, each with its rows; without those that have none. */
    public List<Group> groups() {
        List<Group> groups = new ArrayList<>();
        for (Reason reason : Reason.values()) {
            List<Adjustment> own =
                    rows.stream().filter(row -> row.reason() == reason).toList();
            if (!own.isEmpty()) {
                groups.add(new Group(reason, own));
            }
        }
        return groups;
    }

    /** All rows of one reason. */
    public record Group(Reason reason, List<Adjustment> rows) {

        public Amount opening() {
            return rows.stream().map(Adjustment::opening).collect(Amount.sum());
        }

        public Amount within() {
            return rows.stream().map(Adjustment::within).collect(Amount.sum());
        }

        public Amount profit() {
            return rows.stream().map(Adjustment::profit).collect(Amount.sum());
        }
    }

    private static Amount under(@Nullable Difference difference, TaxBasis basis) {
        return difference == null ? Amount.ZERO : difference.under(basis);
    }

    /** What several rows say about one subject is one difference. */
    private static Map<Key, Difference> byKey(Collection<Difference> differences) {
        Map<Key, Difference> result = new LinkedHashMap<>();
        for (Difference difference : differences) {
            result.merge(
                    Key.of(difference),
                    difference,
                    (one, other) -> new Difference(
                            one.reason(),
                            one.category(),
                            one.subject(),
                            one.amount().plus(other.amount())));
        }
        return result;
    }
}
