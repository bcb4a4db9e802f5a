package patinary.selling;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * The smallest price P such that at P and at every higher price no less than the target remains:
 * docs/handbook/what-to-ask.md.
 *
 * <p>Without rounding, what remains is a straight line between the prices at which a step, a least or a most begins to
 * hold. So each stretch is solved in closed form, from the top down, and only the few prices around the solution, where
 * rounding decides, are tried one by one. With one stretch this is the closed form itself. Why "at every higher price":
 * where a percentage holds for the whole base, a higher price may leave less.
 */
public final class WhatToAsk {

    /** Tax, fee and payment fee are rounded: each by no more than half, and a kink by less than one. */
    private static final BigDecimal ROUNDING = BigDecimal.valueOf(4);

    /** A stretch as short as this is tried price by price. */
    private static final long SHORT = 16;

    private static final long HIGHEST = 1_000_000_000_000L;

    private final Terms terms;
    private final long target;

    private WhatToAsk(Terms terms, Amount target) {
        this.terms = terms;
        this.target = target.minor();
    }

    /** @return nothing where no price leaves as much, because what is kept grows as fast as the price */
    public static Optional<Amount> smallest(Terms terms, Amount target) {
        return new WhatToAsk(terms, target).search();
    }

    private Optional<Amount> search() {
        SortedSet<Long> breaks = new Breaks(terms).find(HIGHEST);
        long to = HIGHEST;
        while (!breaks.isEmpty()) {
            long from = breaks.last();
            Long failing = lastFailing(from, to);
            if (failing != null) {
                return failing >= HIGHEST ? Optional.empty() : Optional.of(Amount.of(failing + 1));
            }
            to = from - 1;
            breaks = breaks.headSet(from);
        }
        return Optional.of(Amount.ZERO);
    }

    /** The highest price of a stretch at which too little remains; null where none is. */
    private @Nullable Long lastFailing(long from, long to) {
        if (to < from) {
            return null;
        }
        if (to - from <= SHORT) {
            return scan(from, to);
        }
        BigDecimal low = terms.exactNet(BigDecimal.valueOf(from));
        BigDecimal slope = terms.exactNet(BigDecimal.valueOf(from + 1)).subtract(low);
        if (slope.signum() == 0) {
            return level(low.subtract(BigDecimal.valueOf(target)), from, to);
        }
        long one = crossing(from, low, slope, ROUNDING.negate());
        long other = crossing(from, low, slope, ROUNDING);
        long first = Math.max(from, Math.min(one, other));
        long last = Math.min(to, Math.max(one, other));
        if (slope.signum() < 0) {
            return last < to ? Long.valueOf(to) : scan(first, to);
        }
        Long near = first <= last ? scan(first, last) : null;
        return near != null ? near : below(from, first, to);
    }

    /** A line that neither rises nor falls; one that goes on for ever and only just leaves enough does not count. */
    private @Nullable Long level(BigDecimal over, long from, long to) {
        if (over.abs().compareTo(ROUNDING) <= 0) {
            return to == HIGHEST ? Long.valueOf(to) : scan(from, to);
        }
        return over.signum() < 0 ? Long.valueOf(to) : null;
    }

    /** On a rising line every price below the crossing leaves too little. */
    private @Nullable Long below(long from, long first, long to) {
        long last = Math.min(first - 1, to);
        return last >= from ? Long.valueOf(last) : null;
    }

    private @Nullable Long scan(long from, long to) {
        for (long price = to; price >= from; price--) {
            if (terms.net(price) < target) {
                return price;
            }
        }
        return null;
    }

    /** The price at which the line is off the target by so much; kept within what a price can be. */
    private long crossing(long from, BigDecimal low, BigDecimal slope, BigDecimal off) {
        BigDecimal price = BigDecimal.valueOf(target)
                .add(off)
                .subtract(low)
                .divide(slope, MathContext.DECIMAL64)
                .add(BigDecimal.valueOf(from));
        return price.setScale(0, off.signum() * slope.signum() > 0 ? RoundingMode.CEILING : RoundingMode.FLOOR)
                .max(BigDecimal.valueOf(-1))
                .min(BigDecimal.valueOf(HIGHEST))
                .longValueExact();
    }
}
