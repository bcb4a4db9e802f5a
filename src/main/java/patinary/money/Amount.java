package patinary.money;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.stream.Collector;

/**
 * An exact amount of the shop's one currency, counted in minor units (cents, where the currency has them).
 *
 * <p>A shop has one currency, so an amount carries no currency code; {@link ShopCurrency} knows it where text is read
 * or written. Every operation is exact or names its rounding, and throws {@link ArithmeticException} rather than wrap.
 *
 * @param minor the number of minor units; negative amounts are owed the other way round
 */
public record Amount(long minor) implements Comparable<Amount> {

    /** Nothing. */
    public static final Amount ZERO = new Amount(0);

    public static Amount of(long minor) {
        return minor == 0 ? ZERO : new Amount(minor);
    }

    public Amount plus(Amount other) {
        return of(Math.addExact(minor, other.minor));
    }

    public Amount minus(Amount other) {
        return of(Math.subtractExact(minor, other.minor));
    }

    public Amount negated() {
        return of(Math.negateExact(minor));
    }

    public Amount absolute() {
        return minor < 0 ? negated() : this;
    }

    /** This amount times an exact decimal, for instance a price times a quantity, rounded as named. */
    public Amount times(BigDecimal factor, RoundingMode rounding) {
        return of(
                BigDecimal.valueOf(minor).multiply(factor).setScale(0, rounding).longValueExact());
    }

    /**
     * The part {@code numerator / denominator} of this amount, rounded once.
     *
     * @throws ArithmeticException where the denominator is zero
     */
    public Amount part(BigDecimal numerator, BigDecimal denominator, RoundingMode rounding) {
        return of(BigDecimal.valueOf(minor)
                .multiply(numerator)
                .divide(denominator, 0, rounding)
                .longValueExact());
    }

    public boolean isZero() {
        return minor == 0;
    }

    public boolean isNegative() {
        return minor < 0;
    }

    public boolean isPositive() {
        return minor > 0;
    }

    public int signum() {
        return Long.signum(minor);
    }

    public Amount min(Amount other) {
        return minor <= other.minor ? this : other;
    }

    public Amount max(Amount other) {
        return minor >= other.minor ? this : other;
    }

    /** Adds up a stream of amounts. */
    public static Collector<Amount, ?, Amount> sum() {
        return Collector.of(
                () -> new BigInteger[] {BigInteger.ZERO},
                (total, amount) -> total[0] = total[0].add(BigInteger.valueOf(amount.minor)),
                (left, right) -> new BigInteger[] {left[0].add(right[0])},
                total -> of(total[0].longValueExact()));
    }

    @Override
    public int compareTo(Amount other) {
        return Long.compare(minor, other.minor);
    }
}
