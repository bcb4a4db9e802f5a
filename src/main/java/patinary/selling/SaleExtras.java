package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What stands beside the price of a sale.
 *
 * @param discountCode the code that the buyer used, as it was called then; empty without one
 * @param tip what the buyer gave beyond what was asked, or null
 */
@Embeddable
public record SaleExtras(
        String discountCode,
        @Column(name = "tip_minor") @Nullable Amount tip) {

    public static final SaleExtras NONE = new SaleExtras("", null);

    /** The tip, or nothing at all. */
    public Amount tipOrNone() {
        return tip == null ? Amount.ZERO : tip;
    }
}
