package patinary.sending;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import patinary.measure.Dimension;
import patinary.measure.Quantity;
import patinary.measure.ShapeText;
import patinary.measure.UnreadableQuantity;

/**
 * The outer size of something to be sent: three lengths, whichever way round it lies.
 *
 * @param sides in centimetres, the longest first
 */
record BoxSize(List<BigDecimal> sides) {

    static final int SIDES = 3;

    BoxSize {
        sides = sides.stream().sorted((a, b) -> b.compareTo(a)).toList();
        if (sides.size() != SIDES || sides.get(SIDES - 1).signum() <= 0) {
            throw new IllegalArgumentException("A size is three lengths above zero, not " + sides);
        }
    }

    /**
     * Reads a size such as {@code 12 x 9 x 6 in}.
     *
     * @throws UnreadableQuantity where a part of it is no length
     * @throws IllegalArgumentException where it is not three lengths above zero
     */
    static BoxSize read(String typed) {
        List<Quantity> lengths = ShapeText.lengths(typed);
        lengths.forEach(length -> length.require(Dimension.LENGTH));
        return new BoxSize(lengths.stream().map(Quantity::inBase).toList());
    }

    /** A size that was read before and kept as it was typed; nothing where there is none. */
    static Optional<BoxSize> kept(String typed) {
        try {
            return typed.isBlank() ? Optional.empty() : Optional.of(read(typed));
        } catch (IllegalArgumentException brokenInTheArchive) {
            return Optional.empty();
        }
    }

    /** Whether it fits into another, turned as it may be along its sides; as large as it is small enough. */
    boolean fitsIn(BoxSize other) {
        return IntStream.range(0, SIDES).allMatch(side -> sides.get(side).compareTo(other.sides.get(side)) <= 0);
    }
}
