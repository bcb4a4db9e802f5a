package patinary.shop;

import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;

/**
 * What the owner aims at when she buys and when she names a price. What is used until she says something of her own is
 * common practice, no source: half a year, nothing for what never sells, no wished profit beyond her hours.
 *
 * @param horizonDays within how many days on offer a piece should sell
 * @param salvage what a piece brings that does not sell in that time
 * @param target the profit she wishes for each piece, after her hours
 * @param targetReturn or the profit as a share of all the money in the piece; null where she wishes an amount
 * @param purchaseTax what tax and premium add to a price at the shelf
 * @param priceEndings how her prices end
 */
public record Aims(
        int horizonDays,
        Amount salvage,
        Amount target,
        @Nullable Percent targetReturn,
        Percent purchaseTax,
        PriceEndings priceEndings) {

    static final int USUAL_HORIZON = 180;

    static Aims usual(int digits) {
        return new Aims(
                USUAL_HORIZON,
                Amount.ZERO,
                Amount.ZERO,
                null,
                Percent.ZERO,
                PriceEndings.parse("", digits).orElseThrow());
    }
}
