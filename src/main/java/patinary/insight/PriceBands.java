package patinary.insight;

import java.util.Collection;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
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
        HIGH
    }

    private static final int THIRDS = 3;

    /** @param prices at least one */
    static PriceBands of(Collection<Amount> prices) {
        SortedMap<Amount, Long> counted = new TreeMap<>();
        prices.forEach(price -> counted.merge(price, 1L, Long::sum));
        return ofCounted(counted);
    }

    /** @param prices each with how many asked it first; at least one */
    static PriceBands ofCounted(SortedMap<Amount, Long> prices) {
        long all = prices.values().stream().mapToLong(Long::longValue).sum();
        return new PriceBands(third(prices, all), third(prices, 2 * all));
    }

    /** The lowest price that so many thirds of the offers, rounded up, do not go beyond. */
    private static Amount third(SortedMap<Amount, Long> prices, long thirds) {
        long upTo = 0;
        for (Map.Entry<Amount, Long> price : prices.entrySet()) {
            upTo += price.getValue();
            if (upTo * THIRDS >= thirds) {
                return price.getKey();
            }
        }
        return prices.lastKey();
    }

    Band of(Amount price) {
        if (price.compareTo(low) <= 0) {
            return Band.LOW;
        }
        return price.compareTo(high) <= 0 ? Band.MIDDLE : Band.HIGH;
    }
}
