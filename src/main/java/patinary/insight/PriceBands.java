package patinary.insight;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * Three bands of first asked prices with about a third of the offers in each.
 *
 * @param low the highest price of the lowest band
 * @param high the highest price of the middle one
 */
record PriceBands(Amount low, Amount high) {

    enum Band {
        LOW,
        MIDDLE,
        HIGH;

        /** As it stands among the groups of a page. */
        String word() {
            return String.valueOf(ordinal() + 1);
        }
    }

    private static final int THIRDS = 3;

    /** @param prices at least one */
    static PriceBands of(Collection<Amount> prices) {
        List<Amount> sorted = prices.stream().sorted().toList();
        return new PriceBands(third(sorted, 1), third(sorted, 2));
    }

    /** The lowest price that so many thirds of the offers, rounded up, do not go beyond. */
    private static Amount third(List<Amount> sorted, int thirds) {
        int offers = (thirds * sorted.size() + THIRDS - 1) / THIRDS;
        return sorted.get(offers - 1);
    }

    /** The group of a price on a page: its band, or the one without a name where there is none. */
    static List<String> groups(@Nullable Amount price, @Nullable PriceBands bands) {
        return price == null || bands == null
                ? List.of("")
                : List.of(bands.of(price).word());
    }

    Band of(Amount price) {
        if (price.compareTo(low) <= 0) {
            return Band.LOW;
        }
        return price.compareTo(high) <= 0 ? Band.MIDDLE : Band.HIGH;
    }
}
