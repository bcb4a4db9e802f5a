package patinary.measure;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An exact decimal number of one unit. Two quantities are equal where number and unit are; {@code 1.50 cup} equals
 * {@code 1.5 cup}, but {@code 2 tbsp} does not equal {@code 1 floz}: compare {@link #inBase()} for that.
 *
 * @param value how many, without trailing zeros after the decimal point; may be negative as the result of a subtraction
 * @param unit of what
 */
public record Quantity(BigDecimal value, Unit unit) {

    public Quantity {
        value = canonical(value);
    }

    public static Quantity of(String value, Unit unit) {
        return new Quantity(new BigDecimal(value), unit);
    }

    /** So many base units of a dimension: mL, g, cm, cm² or each. */
    public static Quantity ofBase(BigDecimal value, Dimension dimension) {
        return new Quantity(value, Unit.base(dimension));
    }

    /**
     * The area of a flat cut, in square centimetres.
     *
     * @throws WrongDimension where either side is not a length
     */
    public static Quantity area(Quantity width, Quantity height) {
        width.require(Dimension.LENGTH);
        height.require(Dimension.LENGTH);
        return ofBase(width.inBase().multiply(height.inBase()), Dimension.AREA);
    }

    /**
     * Reads {@code 1/4 cup}, {@code 0.5 tsp}, {@code 1 1/2 tbsp}, or a cut such as {@code 12 x 8 in} (width by height).
     * A bare number counts things. Fractions are exact; one without an exact decimal, such as a third, is rounded half up
     * at 14 decimals of its unit.
     *
     * @throws UnreadableQuantity where the text is anything else
     */
    public static Quantity parse(String text) {
        return QuantityText.read(text);
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** This quantity in the base unit of its dimension, exactly, without trailing zeros after the decimal point. */
    public BigDecimal inBase() {
        return canonical(value.multiply(unit.factor()));
    }

    /**
     * This quantity in another unit, rounded once as the context says.
     *
     * @throws WrongDimension where the other unit measures something else
     */
    public Quantity to(Unit other, MathContext context) {
        require(other.dimension());
        return new Quantity(inBase().divide(other.factor(), context), other);
    }

    /**
     * The exact sum, in this unit where both have it, else in the base unit.
     *
     * @throws WrongDimension where the other measures something else
     */
    public Quantity plus(Quantity other) {
        if (unit == other.unit) {
            return new Quantity(value.add(other.value), unit);
        }
        other.require(dimension());
        return ofBase(inBase().add(other.inBase()), dimension());
    }

    /**
     * The exact difference, in this unit where both have it, else in the base unit; below zero where less was there.
     *
     * @throws WrongDimension where the other measures something else
     */
    public Quantity minus(Quantity other) {
        return plus(new Quantity(other.value.negate(), other.unit));
    }

    /** This quantity so many times over, exactly. */
    public Quantity times(BigDecimal factor) {
        return new Quantity(value.multiply(factor), unit);
    }

    /**
     * Does nothing where this measures what is wanted.
     *
     * @throws WrongDimension where it does not
     */
    public void require(Dimension wanted) {
        if (dimension() != wanted) {
            throw new WrongDimension(unit, wanted);
        }
    }

    private static BigDecimal canonical(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
