package patinary.finishes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a finish will take on one piece, before it is begun.
 *
 * @param minutes of work
 * @param elapsedFrom minutes from the first step to the end of the last wait, every wait at its shortest
 * @param elapsedTo the same, every wait at its longest
 * @param lines the supplies
 * @param costMinor of those whose quantity and cost are known, in minor units
 */
record Estimate(int minutes, int elapsedFrom, int elapsedTo, List<Line> lines, long costMinor) {

    /**
     * What there is of a supply.
     *
     * @param left on the bench, in the base unit; below zero where uses wait for their receipt
     * @param costMinor cost of {@code costed}
     * @param costed the quantity that has a cost: what is left, else the last that was bought; zero where nothing was
     * @param isLeft whether the cost is that of what is left
     */
    record Stock(BigDecimal left, long costMinor, BigDecimal costed, boolean isLeft) {

        static final Stock NONE = new Stock(BigDecimal.ZERO, 0, BigDecimal.ZERO, false);
    }

    /**
     * A supply of the estimate.
     *
     * @param quantity in the base unit, or null where it goes by a surface that is not known
     * @param costMinor rounded half up to the minor unit, or null where it has no cost yet or the quantity is not known
     * @param missing what the bench is short of, or zero
     * @param isLast whether the cost is that of the last purchase, since nothing is left
     */
    record Line(
            UUID supplyId,
            @Nullable BigDecimal quantity,
            @Nullable Long costMinor,
            BigDecimal missing,
            boolean isLast) {}

    static Estimate of(Finish finish, @Nullable BigDecimal area, Map<UUID, Stock> stock) {
        List<Line> lines = finish.supplies().stream()
                .map(supply -> line(supply, finish.quantity(supply, area), stock.getOrDefault(supply, Stock.NONE)))
                .toList();
        long cost = lines.stream()
                .mapToLong(line -> line.costMinor() == null ? 0 : line.costMinor())
                .sum();
        int minutes = finish.minutes();
        return new Estimate(minutes, minutes + finish.waitFrom(), minutes + finish.waitTo(), lines, cost);
    }

    /** Whether some supply has no quantity, its surface not being known. */
    public boolean isAreaMissing() {
        return lines.stream().anyMatch(line -> line.quantity() == null);
    }

    /** Whether some supply has a quantity and no cost yet. */
    public boolean isCostMissing() {
        return lines.stream().anyMatch(line -> line.quantity() != null && line.costMinor() == null);
    }

    private static Line line(UUID supply, @Nullable BigDecimal quantity, Stock stock) {
        if (quantity == null) {
            return new Line(supply, null, null, BigDecimal.ZERO, false);
        }
        BigDecimal missing =
                quantity.subtract(stock.left().max(BigDecimal.ZERO)).max(BigDecimal.ZERO);
        Long cost = stock.costed().signum() <= 0
                ? null
                : quantity.multiply(BigDecimal.valueOf(stock.costMinor()))
                        .divide(stock.costed(), 0, RoundingMode.HALF_UP)
                        .longValueExact();
        return new Line(supply, quantity, cost, missing, cost != null && !stock.isLeft());
    }
}
