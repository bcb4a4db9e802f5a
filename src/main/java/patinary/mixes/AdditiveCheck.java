package patinary.mixes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.UUID;
import patinary.measure.Dimension;
import patinary.money.Percent;
import patinary.supplies.Supply;

/**
 * Whether a pot has more of an additive than its label allows: its volume as a percentage of the paint it went into. The
 * most is her own figure for each supply; where it is from stands beside it.
 */
public final class AdditiveCheck {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** Too much of something in a pot. */
    public record TooMuch(UUID supply, String name, Percent is, Percent most, String note) {}

    private AdditiveCheck() {}

    /**
     * How an ingredient stands to its limit.
     *
     * @param quantity of the additive, in its base unit
     * @param made the volume of everything in the pot, the additive included, in millilitres
     * @return what is wrong, or nothing where there is no limit, none by volume, or less was used
     */
    public static Optional<TooMuch> of(UUID id, Supply.Facts supply, BigDecimal quantity, BigDecimal made) {
        Percent most = supply.limits().most();
        if (most == null || supply.dimension() != Dimension.VOLUME) {
            return Optional.empty();
        }
        BigDecimal paint = made.subtract(quantity);
        if (quantity.multiply(HUNDRED).compareTo(paint.multiply(most.value())) <= 0) {
            return Optional.empty();
        }
        BigDecimal is =
                paint.signum() <= 0 ? HUNDRED : quantity.multiply(HUNDRED).divide(paint, 1, RoundingMode.HALF_UP);
        return Optional.of(new TooMuch(
                id, supply.name(), new Percent(is), most, supply.limits().mostNote()));
    }

    /** The most of an additive in so much paint. */
    static BigDecimal most(Percent most, BigDecimal paint) {
        return paint.multiply(most.value()).divide(HUNDRED, 14, RoundingMode.HALF_UP);
    }
}
