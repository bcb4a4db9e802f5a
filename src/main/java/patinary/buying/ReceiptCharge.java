package patinary.buying;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * Something the till added to or took off several lines at once.
 *
 * @param line order on the receipt, from 1
 * @param kind what it is
 * @param title as printed
 * @param percent of the base, or null where an amount is given
 * @param amount as printed, or null where a percentage is given; a discount is typed as a positive amount
 * @param taxed whether tax was charged on it (shipping, premium, fee)
 * @param afterTax whether a discount was taken off after tax
 */
@Embeddable
public record ReceiptCharge(
        int line,
        @Enumerated(EnumType.STRING) ChargeKind kind,
        String title,
        @Nullable Percent percent,
        @Column(name = "amount_minor") @Nullable Amount amount,
        boolean taxed,
        boolean afterTax) {

    /** The amount as printed, or the percentage of the base, rounded half up once. */
    Amount of(Amount base) {
        if (percent != null) {
            return percent.of(base, RoundingMode.HALF_UP);
        }
        return amount == null ? Amount.ZERO : amount;
    }
}
