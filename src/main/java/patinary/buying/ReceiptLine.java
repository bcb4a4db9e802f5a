package patinary.buying;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/**
 * One line of a receipt.
 *
 * @param line order on the receipt, from 1
 * @param kind what it was bought for
 * @param title what it is
 * @param quantity how many were bought, above zero
 * @param price for one
 * @param discountPercent taken off the line, or null
 * @param discount taken off the line, or null; never both
 * @param about whether the price is remembered rather than read
 * @param supplyId the supply, on supply and shelf lines
 * @param content how much of the supply one holds, in its base unit
 * @param category the expense category, on expense lines
 */
@Embeddable
public record ReceiptLine(
        int line,
        @Enumerated(EnumType.STRING) LineKind kind,
        String title,
        BigDecimal quantity,
        @Column(name = "price_minor") Amount price,
        @Nullable Percent discountPercent,
        @Column(name = "discount_minor") @Nullable Amount discount,
        boolean about,
        @Nullable UUID supplyId,
        @Nullable BigDecimal content,
        @Nullable String category) {

    /** Quantity times price, less the line's own discount; each rounded half up once. */
    public Amount net() {
        Amount gross = price.times(quantity, RoundingMode.HALF_UP);
        if (discountPercent != null) {
            return gross.minus(discountPercent.of(gross, RoundingMode.HALF_UP));
        }
        return discount == null ? gross : gross.minus(discount);
    }

    /** How much of the supply the whole line brought, in its base unit. */
    public BigDecimal supplyQuantity() {
        return content == null ? BigDecimal.ZERO : quantity.multiply(content);
    }
}
