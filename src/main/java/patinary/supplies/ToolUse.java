package patinary.supplies;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import patinary.measure.NamedMeasure;

/**
 * One use of a tool whose price is spread over its uses. It is a measure of the tool like any of her own, so that it can
 * be typed, tapped and corrected like them: of a brush that lasts 40 pieces a use is 1/40.
 */
public final class ToolUse {

    /** The name of the measure. */
    public static final String MEASURE = "use";

    /** What a ticked tool is told as. */
    public static final String ONCE = "1 " + MEASURE;

    /** More uses than this are no tool. */
    public static final int MOST = 100_000;

    private static final int SCALE = 14;

    /** Fine enough to read, too coarse to show what the last decimal of a third leaves. */
    private static final int READ = 2;

    private ToolUse() {}

    /**
     * The part of one tool that a use takes. Rounded up at the last decimal: all uses together are never less than one,
     * and the last takes what is left.
     */
    public static BigDecimal size(int uses) {
        return BigDecimal.ONE.divide(BigDecimal.valueOf(uses), SCALE, RoundingMode.CEILING);
    }

    /** The size of a use of this supply now; empty where it is no tool, or one that is an expense at once. */
    public static Optional<BigDecimal> size(Supply.Facts facts) {
        return facts.wear() != Wear.BY_USE
                ? Optional.empty()
                : facts.measures().stream()
                        .filter(measure -> measure.name().equals(MEASURE))
                        .map(Supply.Named::quantity)
                        .findFirst();
    }

    /** The size that a use had among the measures of a day. */
    public static Optional<BigDecimal> size(List<NamedMeasure> measures) {
        return measures.stream()
                .filter(measure -> measure.name().equals(MEASURE))
                .map(measure -> measure.quantity().value())
                .findFirst();
    }

    /** How many uses one tool lasts at this size, a whole number, rounded half up. */
    public static int lasts(BigDecimal size) {
        return BigDecimal.ONE.divide(size, 0, RoundingMode.HALF_UP).intValueExact();
    }

    /** How many uses a quantity is, for reading: two decimals, rounded half up. */
    public static BigDecimal uses(BigDecimal quantity, BigDecimal size) {
        BigDecimal uses = quantity.divide(size, READ, RoundingMode.HALF_UP);
        return uses.signum() == 0 ? BigDecimal.ZERO : uses.stripTrailingZeros();
    }

    /** So many uses as she would have typed them. */
    public static String words(BigDecimal uses) {
        String number = uses.stripTrailingZeros().toPlainString();
        return number.equals("1") ? ONCE : number + " " + MEASURE + "s";
    }
}
