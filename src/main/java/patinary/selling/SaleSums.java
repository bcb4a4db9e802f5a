package patinary.selling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Tags;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * What each thing on a sale earned: its part of the price after discounts, of the shipping charged and of the fee.
 *
 * <p>The sale's discount, shipping and fee are shared over the lines by their net price (equally where every price is
 * zero), then over the pieces of a set by their weights, by largest remainder. See docs/handbook/sales.md.
 */
public final class SaleSums {

    /** One piece, or one retail line, with its parts of the sale. */
    public record Part(
            int line, @Nullable UUID piece, @Nullable UUID supply, Amount price, Amount shipping, Amount fee) {

        Tags tags() {
            return new Tags(null, null, piece, supply, null, null, false);
        }
    }

    private final List<Part> parts;
    private final Amount due;

    private SaleSums(List<Part> parts, Amount due) {
        this.parts = List.copyOf(parts);
        this.due = due;
    }

    public static SaleSums of(SaleContent sale) {
        List<Amount> nets = sale.lines().stream().map(SaleLine::net).toList();
        List<Amount> discounts = byPrice(sale.discount().negated(), nets);
        List<Amount> shipping = byPrice(sale.shipping(), nets);
        List<Amount> fees = byPrice(sale.fee(), nets);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < nets.size(); i++) {
            SaleLine line = sale.lines().get(i);
            Amount price = nets.get(i).plus(discounts.get(i));
            parts.addAll(parts(sale, line, price, shipping.get(i), fees.get(i)));
        }
        Amount price = parts.stream().map(Part::price).collect(Amount.sum());
        Amount tax = sale.taxPassed() ? Amount.ZERO : sale.tax();
        return new SaleSums(
                parts, price.plus(sale.shipping()).plus(tax).plus(sale.extras().tipOrNone()));
    }

    public List<Part> parts() {
        return parts;
    }

    /** Price after discounts, all lines. */
    public Amount price() {
        return parts.stream().map(Part::price).collect(Amount.sum());
    }

    /** What the buyer owes the shop: price, shipping, tip, and tax unless the channel collects it. */
    public Amount due() {
        return due;
    }

    private static List<Part> parts(SaleContent sale, SaleLine line, Amount price, Amount shipping, Amount fee) {
        List<SalePiece> pieces = sale.ordered().stream()
                .filter(piece -> piece.line() == line.line())
                .sorted(Comparator.comparing(piece -> piece.pieceId().toString()))
                .toList();
        if (pieces.isEmpty()) {
            return List.of(new Part(line.line(), null, line.supplyId(), price, shipping, fee));
        }
        var weights = pieces.stream().map(SalePiece::weight).toList();
        List<Amount> prices = Shares.split(price, weights);
        List<Amount> shippings = Shares.split(shipping, weights);
        List<Amount> fees = Shares.split(fee, weights);
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            parts.add(
                    new Part(line.line(), pieces.get(i).pieceId(), null, prices.get(i), shippings.get(i), fees.get(i)));
        }
        return parts;
    }

    private static List<Amount> byPrice(Amount amount, List<Amount> nets) {
        return nets.isEmpty() ? List.of() : Shares.byAmount(amount, nets);
    }
}
