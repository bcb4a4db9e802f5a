package patinary.money;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares an amount without losing a minor unit: the largest remainder method, also named after Hamilton.
 *
 * <p>Each share gets the whole part of its quota; the units left over go, one each, to the largest fractional parts,
 * ties to the earlier share. A negative amount is shared as its absolute value, so that a refund mirrors the sale.
 * Remainders are exact integers. See docs/handbook/sharing.md for the published examples.
 */
public final class Shares {

    private Shares() {}

    /**
     * Shares {@code total} in proportion to {@code weights}; where every weight is zero, equally.
     *
     * @return one amount per weight, in order, adding up to the total
     * @throws IllegalArgumentException where there is no weight or a negative one
     */
    public static List<Amount> split(Amount total, List<BigDecimal> weights) {
        List<BigInteger> whole = wholeNumbers(weights);
        BigInteger sum = whole.stream().reduce(BigInteger.ZERO, BigInteger::add);
        if (sum.signum() == 0) {
            return split(total, Collections.nCopies(weights.size(), BigDecimal.ONE));
        }
        BigInteger size = BigInteger.valueOf(total.minor()).abs();
        long[] shares = new long[whole.size()];
        BigInteger[] remainders = new BigInteger[whole.size()];
        long left = size.longValueExact();
        for (int i = 0; i < shares.length; i++) {
            BigInteger[] quota = size.multiply(whole.get(i)).divideAndRemainder(sum);
            shares[i] = quota[0].longValueExact();
            remainders[i] = quota[1];
            left -= shares[i];
        }
        IntStream.range(0, shares.length)
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> remainders[i]).reversed())
                .limit(left)
                .forEach(i -> shares[i]++);
        List<Amount> result = new ArrayList<>(shares.length);
        for (long share : shares) {
            result.add(Amount.of(total.isNegative() ? -share : share));
        }
        return result;
    }

    /** Shares {@code total} into {@code parts} like shares. */
    public static List<Amount> equally(Amount total, int parts) {
        return split(total, Collections.nCopies(parts, BigDecimal.ONE));
    }

    /** Weights that are amounts themselves, for instance the net of each line. */
    public static List<Amount> byAmount(Amount total, List<Amount> weights) {
        return split(
                total, weights.stream().map(w -> BigDecimal.valueOf(w.minor())).toList());
    }

    private static List<BigInteger> wholeNumbers(List<BigDecimal> weights) {
        if (weights.isEmpty() || weights.stream().anyMatch(w -> w.signum() < 0)) {
            throw new IllegalArgumentException("Sharing needs at least one weight and none below zero: " + weights);
        }
        int scale = weights.stream().mapToInt(BigDecimal::scale).max().orElse(0);
        return weights.stream()
                .map(w -> w.movePointRight(Math.max(scale, 0)).toBigIntegerExact())
                .toList();
    }
}
