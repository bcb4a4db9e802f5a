package patinary.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How powder paint is mixed, by volume. Common practice, no source: makers' sheets differ, and the maker's own records
 * replace these starting values.
 *
 * @param powder parts of powder
 * @param water parts of water
 * @param yieldShare the mixed volume as a share of the two volumes put in; below one, since water fills the gaps in the powder
 */
public record MixRatio(BigDecimal powder, BigDecimal water, BigDecimal yieldShare) {

    /** Equal volumes; one cup of each gives one and a half cups. Common practice, no source. */
    public static final MixRatio COMMON = new MixRatio(BigDecimal.ONE, BigDecimal.ONE, new BigDecimal("0.75"));

    /** The most bonding additive to one part of mixed paint. Common practice, no source. */
    private static final BigDecimal MOST_ADDITIVE = new BigDecimal("0.5");

    /** @throws IllegalArgumentException where a part is not above zero or the yield is not above zero and at most one */
    public MixRatio {
        if (powder.signum() <= 0 || water.signum() <= 0) {
            throw new IllegalArgumentException("A mix needs some of both: " + powder + " to " + water);
        }
        if (yieldShare.signum() <= 0 || yieldShare.compareTo(BigDecimal.ONE) > 0) {
            throw new IllegalArgumentException("Mixing gives no more than went in: " + yieldShare);
        }
    }

    /**
     * The water to put to so much powder.
     *
     * @throws WrongDimension where the powder is not given by volume
     */
    public Quantity waterFor(Quantity powderVolume, MathContext context) {
        powderVolume.require(Dimension.VOLUME);
        return new Quantity(powderVolume.value().multiply(water).divide(powder, context), powderVolume.unit());
    }

    /**
     * The paint that so much powder makes with its water.
     *
     * @throws WrongDimension where the powder is not given by volume
     */
    public Quantity paintFrom(Quantity powderVolume, MathContext context) {
        return powderVolume.plus(waterFor(powderVolume, context)).times(yieldShare);
    }

    /**
     * The powder that makes so much paint.
     *
     * @throws WrongDimension where the paint is not given by volume
     */
    public Quantity powderFor(Quantity paint, MathContext context) {
        paint.require(Dimension.VOLUME);
        BigDecimal paintPerPart = powder.add(water).multiply(yieldShare);
        return new Quantity(paint.value().multiply(powder).divide(paintPerPart, context), paint.unit());
    }

    /**
     * The most bonding additive to put into mixed paint: half its volume on a slick surface in the first coat, else none.
     *
     * @param coat one for the first
     * @throws WrongDimension where the paint is not given by volume
     * @throws IllegalArgumentException where the coat is below one
     */
    public static Quantity mostAdditive(Quantity mixedPaint, boolean slickSurface, int coat) {
        mixedPaint.require(Dimension.VOLUME);
        if (coat < 1) {
            throw new IllegalArgumentException("The first coat is coat 1, not " + coat);
        }
        return mixedPaint.times(slickSurface && coat == 1 ? MOST_ADDITIVE : BigDecimal.ZERO);
    }
}
