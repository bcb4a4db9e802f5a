package patinary.exchange;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Something that must hold of a row beyond its single cells, as the database's own checks say.
 *
 * @param column the column that an error is shown at
 * @param reason the message's last word
 * @param holds the rule; only asked of rows whose cells could all be read
 */
record Rule(String column, String reason, Predicate<Row> holds) {

    static Rule atMostOne(String first, String second) {
        return new Rule(second, "at-most-one", row -> !row.has(first) || !row.has(second));
    }

    static Rule exactlyOne(String first, String second) {
        return new Rule(second, "exactly-one", row -> row.has(first) != row.has(second));
    }

    static Rule together(String first, String second) {
        return new Rule(second, "together", row -> row.has(first) == row.has(second));
    }

    /** The column may only be filled where another is. */
    static Rule only(String column, String other) {
        return new Rule(column, "only-with", row -> !row.has(column) || row.has(other));
    }

    /** The column is filled where another has one of these words, and empty elsewhere. */
    static Rule filledWhere(String column, String other, String... words) {
        Set<String> where = Set.of(words);
        return new Rule(column, "filled-where", row -> row.has(column) == where.contains(row.word(other)));
    }

    static Rule different(String first, String second) {
        return new Rule(second, "different", row -> !Objects.equals(row.get(first), row.get(second)));
    }

    static Rule neededUnlessZero(String column, String amount) {
        return new Rule(column, "needed", row -> row.has(column) || row.isZero(amount));
    }

    static Rule notBefore(String later, String earlier) {
        return new Rule(
                later,
                "not-before",
                row -> !row.has(later) || !row.has(earlier) || !row.date(later).isBefore(row.date(earlier)));
    }

    static Rule notLess(String more, String less) {
        return new Rule(
                more,
                "not-less",
                row -> row.get(more) == null
                        || row.get(less) == null
                        || ((BigDecimal) row.get(more)).compareTo((BigDecimal) row.get(less)) >= 0);
    }
}
