package patinary.asking;

import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import patinary.survival.Limits;
import patinary.survival.Quantile;
import patinary.survival.Stay;
import patinary.survival.SurvivalCurve;

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

    /** Below this many sold the figures are shown with words that they rest on few. A judgement. */
    static final int FEW = 5;

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
                medianHalfDays(offers),
                prices.isEmpty() ? null : prices.get(0),
                prices.isEmpty() ? null : prices.get(prices.size() - 1));
    }

    /** The estimate of Kaplan and Meier: what still stands or was withdrawn counts for the days it stood. */
    private static @Nullable Long medianHalfDays(List<PastOffer> offers) {
        Quantile half = SurvivalCurve.of(offers.stream()
                        .map(offer -> Stay.of(Math.toIntExact(offer.days()), offer.exit()))
                        .toList())
                .median(Limits.LOG_LOG);
        return half.isReached() ? Math.round(half.day() * 2) : null;
    }

    /** Whether so few sold that the figures say little. */
    public boolean few() {
        return sold < FEW;
    }

    /** The median for reading, a half where the middle lies between two days. */
    public @Nullable String median() {
        if (medianHalfDays == null) {
            return null;
        }
        return medianHalfDays % 2 == 0 ? String.valueOf(medianHalfDays / 2) : medianHalfDays / 2 + ".5";
    }
}
