package patinary.selling;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Embedded;
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
 * @param bundle the bundle that this line was sold as a part of, or null; then the quantity counts bundles, the price is
 *     the part's share of the price of one, and the content is what one has of the supply
 */
@Embeddable
public record SaleLine(
        int line,
        String title,
        BigDecimal quantity,
        @Column(name = "price_minor") Amount price,
        @Column(name = "discount_minor") Amount discount,
        @Nullable UUID supplyId,
        @Nullable BigDecimal content,
        @Embedded @Nullable OfBundle bundle) {

    /**
     * The bundle a line was a part of, as it was called when it was sold.
     *
     * @param bundleNumber tells the bundles of one sale apart, from 1
     */
    @Embeddable
    public record OfBundle(UUID bundleId, int bundleNumber, String bundleTitle) {}

    /** A line that was sold by itself. */
    public SaleLine(
            int line,
            String title,
            BigDecimal quantity,
            Amount price,
            Amount discount,
            @Nullable UUID supplyId,
            @Nullable BigDecimal content) {
        this(line, title, quantity, price, discount, supplyId, content, null);
    }

    /** Whether it is a part of the bundle with this number on the sale. */
    boolean isOf(int bundleNumber) {
        return bundle != null && bundle.bundleNumber() == bundleNumber;
    }

    /** Quantity times price less the line's discount, rounded half up once. */
    public Amount net() {
        return price.times(quantity, RoundingMode.HALF_UP).minus(discount);
    }

    /** How much of the supply the line takes from the shelf, in its base unit. */
    public BigDecimal supplyQuantity() {
        return content == null ? BigDecimal.ZERO : quantity.multiply(content);
    }
}
