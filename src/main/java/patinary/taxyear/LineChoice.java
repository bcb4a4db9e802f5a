package patinary.taxyear;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * Where an account and category goes in a year.
 *
 * @param name what a person calls the category; empty for the whole account
 * @param amount what the year's documents put on it, as a page shows it
 * @param line the line it goes to, or null where it goes to none
 * @param changed whether that is other than supplied
 * @param fixed whether it cannot go elsewhere: what makes up the cost of goods
 */
record LineChoice(
        String account,
        String category,
        String name,
        Amount amount,
        @Nullable TaxLine line,
        boolean changed,
        boolean fixed) {

    String key() {
        return TaxTable.key(account, category);
    }

    /** The line's meaning; empty where it goes to none. */
    String meaning() {
        return Optional.ofNullable(line).map(TaxLine::meaning).orElse("");
    }
}
