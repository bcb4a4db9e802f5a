package patinary.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How a supply is bought: so many containers or sheets to a pack, each holding so much, for instance 3 sheets of
 * 12 × 12 in, or 6 jars of 4 fl oz.
 *
 * @param count how many to a pack; above zero
 * @param each what one of them holds; above zero
 */
public record Pack(int count, Quantity each) {

    /** @throws IllegalArgumentException where either is zero or less */
    public Pack {
        if (count <= 0 || each.value().signum() <= 0) {
            throw new IllegalArgumentException("A pack holds something: " + count + " of " + each);
        }
    }

    /** What so many packs hold, exactly, in the base unit. */
    public Quantity contents(BigDecimal packs) {
        return Quantity.ofBase(each.inBase().multiply(BigDecimal.valueOf(count)).multiply(packs), each.dimension());
    }

    /**
     * The fewest whole packs that hold at least this much; none for nothing or less.
     *
     * @throws WrongDimension where the pack measures something else
     */
    public long toHold(Quantity wanted) {
        wanted.require(each.dimension());
        if (wanted.value().signum() <= 0) {
            return 0;
        }
        return wanted.inBase()
                .divide(contents(BigDecimal.ONE).value(), 0, RoundingMode.CEILING)
                .longValueExact();
    }
}
