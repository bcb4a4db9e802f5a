package patinary.selling;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;

/**
 * All that a buyer paid for pieces that never came is given back: docs/handbook/posting-rules-selling.md.
 *
 * @param saleId the order that gives way
 * @param order the order, which no longer delivers the pieces
 * @param left what was paid for each of the pieces and not given back yet
 * @param restShipping shipping not given back yet
 * @param restTax tax not given back yet; nothing where the channel passes it on
 */
record GivingBack(UUID saleId, SaleContent order, Map<UUID, Amount> left, Amount restShipping, Amount restTax) {

    /** An order of which nothing was given back yet. */
    static GivingBack fresh(UUID saleId, SaleContent order, List<UUID> pieces) {
        Map<UUID, Amount> prices = new LinkedHashMap<>();
        order.sums().parts().stream()
                .filter(part -> part.piece() != null && pieces.contains(part.piece()))
                .forEach(part -> prices.put(part.piece(), part.price()));
        Amount tax = order.taxPassed() ? Amount.ZERO : order.tax();
        return new GivingBack(saleId, order, prices, order.shipping(), tax);
    }

    /**
     * The price of each piece; all the shipping where nothing else of the order is delivered, and the same part of the tax as
     * of the price, rounded half up, or all of it.
     */
    RefundContent on(LocalDate day, String note, Amount feeBack, Way way, @Nullable UUID place) {
        List<RefundLine> lines = new ArrayList<>();
        left.forEach((piece, amount) -> lines.add(new RefundLine(lines.size() + 1, piece, null, null, amount, false)));
        boolean all = order.nothingDelivered();
        return new RefundContent(
                day,
                note,
                saleId,
                way,
                way == Way.PLACE ? place : null,
                all ? restShipping : Amount.ZERO,
                all ? restTax : taxPart(),
                feeBack,
                order.feePlaceId(),
                lines);
    }

    /** What was paid at once goes back to where it came in, unless another place is named. */
    @Nullable
    UUID usualPlace() {
        return order.payments().stream()
                .filter(tender -> tender.way() == Way.PLACE)
                .map(Tender::placeId)
                .findFirst()
                .orElse(order.feePlaceId());
    }

    private Amount taxPart() {
        Amount price = order.sums().price();
        Amount paid = left.values().stream().collect(Amount.sum());
        return price.isZero()
                ? Amount.ZERO
                : restTax.min(order.tax()
                        .part(
                                BigDecimal.valueOf(paid.minor()),
                                BigDecimal.valueOf(price.minor()),
                                RoundingMode.HALF_UP));
    }
}
