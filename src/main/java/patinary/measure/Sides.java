package patinary.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;

/**
 * The two sides of something flat: a sheet, a motif, a cut.
 *
 * @param width above zero, in centimetres
 * @param height above zero, in centimetres
 */
public record Sides(BigDecimal width, BigDecimal height) {

    /** An eighth of an inch is as fine as a ruler tells. */
    private static final int RULER = 3;

    /** @throws IllegalArgumentException where a side is not above zero */
    public Sides {
        if (width.signum() <= 0 || height.signum() <= 0) {
            throw new IllegalArgumentException("A side is more than nothing: " + width + " x " + height);
        }
    }

    /**
     * Reads {@code 12 x 8 in}, width by height.
     *
     * @throws UnreadableQuantity where the text is anything else, or a side is nothing
     */
    public static Sides parse(String text) {
        List<Quantity> sides = QuantityText.sides(text);
        if (sides.stream().anyMatch(side -> side.value().signum() == 0)) {
            throw new UnreadableQuantity("measure.error.cut", text.strip());
        }
        return new Sides(sides.get(0).inBase(), sides.get(1).inBase());
    }

    /** In square centimetres, exactly. */
    public BigDecimal area() {
        return width.multiply(height);
    }

    /** Whether this can be cut out of the other, turned or not. */
    public boolean fitsIn(Sides other) {
        return fits(width, height, other) || fits(height, width, other);
    }

    /** As it may be typed again: in inches where both sides are such on a ruler and not in whole millimetres. */
    public String typed() {
        Unit unit = isPlain(Unit.CENTIMETRE, 1) || !isPlain(Unit.INCH, RULER) ? Unit.CENTIMETRE : Unit.INCH;
        return in(width, unit).toPlainString() + " x " + in(height, unit).toPlainString() + " " + unit.code();
    }

    private boolean isPlain(Unit unit, int decimals) {
        return Stream.of(width, height).allMatch(side -> in(side, unit).scale() <= decimals);
    }

    private static BigDecimal in(BigDecimal side, Unit unit) {
        BigDecimal number =
                side.divide(unit.factor(), 9, java.math.RoundingMode.HALF_UP).stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }

    private static boolean fits(BigDecimal wide, BigDecimal high, Sides other) {
        return wide.compareTo(other.width) <= 0 && high.compareTo(other.height) <= 0;
    }
}
