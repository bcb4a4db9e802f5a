package patinary.second;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Exact sums in whole cents. Public, because the scratch database calls them by name. */
public final class Cents {

    private Cents() {}

    /** An amount as the archive writes it, as cents; nothing where the cell is empty. */
    public static Long of(String amount) {
        return amount == null || amount.isEmpty()
                ? null
                : new BigDecimal(amount).movePointRight(2).longValueExact();
    }

    /** A quotient as whole cents, a half away from zero; nothing where something is missing. */
    public static Long halfUp(BigDecimal dividend, BigDecimal divisor) {
        return dividend == null || divisor == null
                ? null
                : dividend.divide(divisor, 0, RoundingMode.HALF_UP).longValueExact();
    }

    /** Largest remainder, ties to the earlier share. */
    static long[] shared(long total, List<BigDecimal> weights) {
        int scale = weights.stream().mapToInt(BigDecimal::scale).max().orElse(0);
        List<BigInteger> whole = weights.stream()
                .map(weight -> weight.setScale(scale).unscaledValue())
                .toList();
        BigInteger sum = whole.stream().reduce(BigInteger.ZERO, BigInteger::add);
        BigInteger size = BigInteger.valueOf(Math.abs(total));
        BigInteger[][] quotas = whole.stream()
                .map(weight -> size.multiply(weight).divideAndRemainder(sum))
                .toArray(BigInteger[][]::new);
        long[] shares = Arrays.stream(quotas)
                .mapToLong(quota -> quota[0].longValueExact())
                .toArray();
        long left = Math.abs(total) - Arrays.stream(shares).sum();
        IntStream.range(0, quotas.length)
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> quotas[i][1]).reversed())
                .limit(left)
                .forEach(i -> shares[i]++);
        return Arrays.stream(shares).map(share -> Long.signum(total) * share).toArray();
    }
}
