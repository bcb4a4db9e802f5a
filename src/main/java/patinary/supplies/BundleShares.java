package patinary.supplies;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * Shares the price of a bundle over its parts: by what they are asked singly; where one of them has no price, by what
 * they cost; where the cost of one is not known either, equally. By largest remainder, so that no cent is lost. See
 * docs/handbook/bundles.md.
 */
public final class BundleShares {

    /**
     * What is known of a part, in minor units, not rounded.
     *
     * @param asked what as much of it is asked when it is sold by itself, or null
     * @param cost the landed cost of as much of it, or null
     */
    public record Known(
            @Nullable BigDecimal asked, @Nullable BigDecimal cost) {}

    /** What the price is shared by. */
    public enum Basis {
        ASKED,
        COST,
        EQUAL
    }

    private BundleShares() {}

    /** What the price of a bundle with these parts is shared by. */
    public static Basis basis(List<Known> parts) {
        if (isWhole(parts, Known::asked)) {
            return Basis.ASKED;
        }
        return isWhole(parts, Known::cost) ? Basis.COST : Basis.EQUAL;
    }

    /** The weight of each part, in order. */
    public static List<BigDecimal> weights(List<Known> parts) {
        return switch (basis(parts)) {
            case ASKED -> all(parts, Known::asked);
            case COST -> all(parts, Known::cost);
            case EQUAL -> Collections.nCopies(parts.size(), BigDecimal.ONE);
        };
    }

    /** The share of each part, in order; they add up to the price. */
    public static List<Amount> of(Amount price, List<Known> parts) {
        return Shares.split(price, weights(parts));
    }

    /** Whether every part has such a figure and they are not all nothing. */
    private static boolean isWhole(List<Known> parts, Function<Known, @Nullable BigDecimal> figure) {
        List<BigDecimal> known = all(parts, figure);
        return known.size() == parts.size() && known.stream().anyMatch(one -> one.signum() > 0);
    }

    private static List<BigDecimal> all(List<Known> parts, Function<Known, @Nullable BigDecimal> figure) {
        return parts.stream().map(figure).filter(Objects::nonNull).toList();
    }
}
