package patinary.asking;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How long it takes until half have sold: the median by Kaplan and Meier (1958), in which an offer that still stands or
 * was withdrawn counts for as long as it was to be had. The share is kept as an exact fraction, so that one half is one
 * half. Where it stays at one half for a while, the middle of that while, as is usual; where nothing ever sells below it,
 * its beginning.
 */
final class SellingTime {

    /** Below this many sold the figure is shown with words that it rests on few. A judgement. */
    static final int FEW = 5;

    /** One offer: how many days it was to be had, and whether it sold. */
    record Try(long days, boolean sold) {}

    private SellingTime() {}

    /** In half days, so that a middle is exact; nothing where fewer than half have sold so far. */
    static Optional<Long> medianHalfDays(List<Try> tries) {
        Map<Long, long[]> days = new TreeMap<>();
        for (Try one : tries) {
            days.computeIfAbsent(one.days(), day -> new long[2])[one.sold() ? 0 : 1]++;
        }
        BigInteger left = BigInteger.ONE;
        BigInteger of = BigInteger.ONE;
        long atRisk = tries.size();
        Long half = null;
        for (Map.Entry<Long, long[]> day : days.entrySet()) {
            long sold = day.getValue()[0];
            if (sold > 0) {
                if (half != null) {
                    return Optional.of(half + day.getKey());
                }
                left = left.multiply(BigInteger.valueOf(atRisk - sold));
                of = of.multiply(BigInteger.valueOf(atRisk));
                int compared = left.shiftLeft(1).compareTo(of);
                if (compared < 0) {
                    return Optional.of(2 * day.getKey());
                }
                half = compared == 0 ? day.getKey() : null;
            }
            atRisk -= sold + day.getValue()[1];
        }
        return Optional.ofNullable(half).map(day -> 2 * day);
    }
}
