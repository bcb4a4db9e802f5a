package patinary.asking;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What offers of things like it asked, and how fast they sold. A set is one offer, and an offer after a return is a new one.
 *
 * @param likeness BOTH, KIND or STYLE: what they have in common with the piece
 * @param offered how many offers
 * @param sold how many of them sold
 * @param medianHalfDays days until half have sold, in half days; null where fewer than half have so far
 * @param low the lowest price first asked of those that sold, in minor units; null where none did
 * @param high the highest
 */
record PastPrices(
        Likeness likeness,
        int offered,
        int sold,
        @Nullable Long medianHalfDays,
        @Nullable Long low,
        @Nullable Long high) {

    enum Likeness {
        BOTH,
        KIND,
        STYLE
    }

    static PastPrices of(Likeness likeness, List<PastOffer> all, Predicate<PastOffer> like) {
        List<PastOffer> offers = all.stream().filter(like).toList();
        List<Long> prices = offers.stream()
                .filter(PastOffer::sold)
                .map(PastOffer::firstPriceMinor)
                .sorted(Comparator.naturalOrder())
                .toList();
        return new PastPrices(
                likeness,
                offers.size(),
                prices.size(),
                SellingTime.medianHalfDays(offers.stream()
                                .map(offer -> new SellingTime.Try(offer.days(), offer.sold()))
                                .toList())
                        .orElse(null),
                prices.isEmpty() ? null : prices.get(0),
                prices.isEmpty() ? null : prices.get(prices.size() - 1));
    }

    /** Whether so few sold that the figures say little. */
    public boolean few() {
        return sold < SellingTime.FEW;
    }

    /** The median for reading, a half where the middle lies between two days. */
    public @Nullable String median() {
        if (medianHalfDays == null) {
            return null;
        }
        return medianHalfDays % 2 == 0 ? String.valueOf(medianHalfDays / 2) : medianHalfDays / 2 + ".5";
    }
}
