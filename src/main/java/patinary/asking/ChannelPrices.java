package patinary.asking;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.PriceEndings;
import patinary.selling.FeeRule;
import patinary.selling.Terms;
import patinary.selling.UsualTerms;

/**
 * What to ask on one channel. A price is null where none leaves enough.
 *
 * @param usual what is charged and spent besides the price
 * @param listing what the channel charges for putting it up; counted once, as paid whether it sells or not
 * @param floor keeps the money whole
 * @param trueFloor pays for her hours and the way too
 * @param target leaves what she wishes for
 */
record ChannelPrices(
        UUID channelId,
        String channel,
        UsualTerms usual,
        Amount listing,
        @Nullable AskedPrice floor,
        @Nullable AskedPrice trueFloor,
        @Nullable AskedPrice target) {

    static ChannelPrices of(
            UUID id, String name, @Nullable FeeRule rule, UsualTerms usual, Needs needs, PriceEndings endings) {
        Amount listing = listing(rule);
        Terms terms = terms(rule, usual);
        return new ChannelPrices(
                id,
                name,
                usual,
                listing,
                AskedPrice.of(terms, needs.floor(), endings).orElse(null),
                AskedPrice.of(terms, needs.trueFloor(), endings).orElse(null),
                AskedPrice.of(terms, needs.target(), endings).orElse(null));
    }

    /** What stands between a price and what remains, with the fee for one offer among what is spent. */
    static Terms terms(@Nullable FeeRule rule, UsualTerms usual) {
        return new UsualTerms(usual.shipping(), usual.outlay().plus(listing(rule)), usual.tax(), usual.shippingTaxed())
                .under(rule);
    }

    private static Amount listing(@Nullable FeeRule rule) {
        Amount perOffer = rule == null ? null : rule.perOffer();
        return perOffer == null ? Amount.ZERO : perOffer;
    }
}
