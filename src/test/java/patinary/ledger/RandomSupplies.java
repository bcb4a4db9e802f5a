package patinary.ledger;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;

/**
 * How a random history says how much: as a quantity, in containers whose size changes from a day on, as a part of one,
 * or as what was cut out of a sheet.
 */
final class RandomSupplies {

    static final UUID PAPER = Story.name("paper");

    /** One supply for each place to run short at while another is there; the paper is used by the cut. */
    static final List<UUID> SUPPLIES = List.of(Story.name("paint"), PAPER, Story.name("wax"));

    private static final int SCALE = 14;
    private static final BigDecimal SQUARE_INCH = new BigDecimal("6.4516");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** From a day on the container holds another quantity, perhaps because it turned out to be another size. */
    private record Container(BigDecimal before, LocalDate changed, BigDecimal after) {
        BigDecimal on(LocalDate day) {
            return day.isBefore(changed) ? before : after;
        }
    }

    private final Random random;
    private final Map<UUID, Container> containers = new HashMap<>();
    private final LocalDate first;
    private final int days;
    private boolean drewCut;
    private boolean drewBothSizes;

    RandomSupplies(Random random, LocalDate first, int days) {
        this.random = random;
        this.first = first;
        this.days = days;
    }

    /** Whether something was cut out of a sheet. */
    boolean drewCut() {
        return drewCut;
    }

    /** Whether a container was used after it had changed its size. */
    boolean drewBothSizes() {
        return drewBothSizes;
    }

    UUID any() {
        return SUPPLIES.get(random.nextInt(SUPPLIES.size()));
    }

    /** Whole containers of the size of that day, or what was on the scales. */
    BigDecimal bought(UUID supply, LocalDate day) {
        return random.nextInt(3) == 0
                ? plain()
                : container(supply, day).multiply(BigDecimal.valueOf(1L + random.nextInt(2)));
    }

    /** As she says it: so much, a third of the jar, or cuts out of the sheet. */
    BigDecimal used(UUID supply, LocalDate day) {
        if (supply.equals(PAPER) && random.nextInt(3) > 0) {
            drewCut = true;
            return cut();
        }
        return random.nextInt(3) == 0 ? part(container(supply, day)) : plain();
    }

    /** Above zero, with up to three decimals. */
    BigDecimal plain() {
        int scale = random.nextInt(4);
        return BigDecimal.valueOf(1L + random.nextInt(9 * (int) Math.pow(10, scale)), scale);
    }

    /** So many alike, each so wide and so high in inches or centimetres, in square decimetres. */
    private BigDecimal cut() {
        BigDecimal sides = BigDecimal.valueOf(1L + random.nextInt(250), 1)
                .multiply(BigDecimal.valueOf(1L + random.nextInt(150), 1))
                .multiply(BigDecimal.valueOf(1L + random.nextInt(3)));
        BigDecimal square = random.nextBoolean() ? sides : sides.multiply(SQUARE_INCH);
        return square.divide(HUNDRED, SCALE, RoundingMode.HALF_UP).stripTrailingZeros();
    }

    private BigDecimal part(BigDecimal whole) {
        return whole.divide(BigDecimal.valueOf(1L + random.nextInt(7)), SCALE, RoundingMode.HALF_UP)
                .stripTrailingZeros();
    }

    private BigDecimal container(UUID supply, LocalDate day) {
        Container container = containers.computeIfAbsent(
                supply, s -> new Container(plain(), first.plusDays(random.nextInt(days)), plain()));
        drewBothSizes |= !day.isBefore(container.changed());
        return container.on(day);
    }
}
