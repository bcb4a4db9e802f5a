package patinary.salestax;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A place with its own sales tax.
 *
 * @param name her own name for it: town, county, state
 * @param rules its rates, the latest first
 * @param uses how many sales and payments name it
 */
public record TaxPlace(UUID id, String name, long version, List<TaxRule> rules, long uses) {

    public Optional<TaxRule> ruleOn(LocalDate day) {
        return TaxRule.on(day, rules);
    }
}
