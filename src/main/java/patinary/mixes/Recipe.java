package patinary.mixes;

import java.math.BigDecimal;
import java.math.MathContext;
import patinary.measure.MixRatio;
import patinary.measure.Quantity;

/**
 * What to put together for a wanted volume.
 *
 * @param first of the powder or the paint, in millilitres
 * @param second of the water or whatever goes to it, in millilitres
 * @param makes what they make together, in millilitres
 */
record Recipe(BigDecimal first, BigDecimal second, BigDecimal makes) {

    /** For reading at the bench; nothing is reckoned with what comes out. */
    private static final MathContext ENOUGH = MathContext.DECIMAL64;

    /**
     * The amounts for a wanted volume.
     *
     * @throws patinary.measure.WrongDimension where what is wanted is no volume
     */
    static Recipe of(MixRatio ratio, Quantity wanted) {
        Quantity first = ratio.powderFor(wanted, ENOUGH);
        Quantity second = ratio.waterFor(first, ENOUGH);
        return new Recipe(first.inBase(), second.inBase(), wanted.inBase());
    }
}
