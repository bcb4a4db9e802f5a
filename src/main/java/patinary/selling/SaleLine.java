package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What a buyer paid for: a piece, a set of pieces, or a supply from the retail shelf.
 *
 * @param line order on the sale, from 1
 * @param title what it is
 * @param quantity how many; 1 for pieces and sets
 * @param price for one, without tax
 * @param discount taken off the line
 * @param supplyId the supply, where it comes from the retail shelf
 * @param content how much of the supply one holds, in its base unit
 */
@Embeddable
public record SaleLine(
        int line,
        String title,
        BigDecimal quantity,
        @Column(name = "price_minor") Amount price,
        @Column(name = "discount_minor") Amount discount,
        @Nullable UUID supplyId,
        @Nullable BigDecimal content) {

    /** Quantity times price less the line's discount, rounded half up once. */
    public Amount net() {
        return price.times(quantity, RoundingMode.HALF_UP).minus(discount);
    }

    /** How much of the supply the line takes from the shelf, in its base unit. */
    public BigDecimal supplyQuantity() {
        return content == null ? BigDecimal.ZERO : quantity.multiply(content);
    }
}
