package patinary.supplies;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import patinary.measure.Dimension;
import patinary.measure.Unit;

/**
 * Says a quantity the way a person would have measured it. The first unit in which it is a short number wins: 236.588 ml
 * reads 8 fl oz, 60 ml stays 60 ml. Where no unit gives a short number, the base unit is rounded half up for reading;
 * nothing is ever reckoned with that.
 */
public final class QuantityWords {

    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    /** As many decimals as a typed number may have. */
    private static final int TYPED_SCALE = 9;

    private static final MathContext EXACT_ENOUGH = new MathContext(40, RoundingMode.HALF_UP);

    private QuantityWords() {}

    /** A number of a unit, for reading. */
    public record Said(BigDecimal number, Unit unit) {}

    /** The quantity for reading; see above. */
    public static Said say(BigDecimal base, Dimension dimension) {
        return units(dimension, base)
                .map(unit -> in(base, unit))
                .filter(said -> isShort(said.number()))
                .findFirst()
                .orElseGet(() -> rounded(base, dimension));
    }

    /** The quantity as it can be typed again: never rounded beyond what a typed number can hold. */
    public static String typed(BigDecimal base, Dimension dimension) {
        Said said = units(dimension, base)
                .map(unit -> in(base, unit))
                .filter(candidate -> isShort(candidate.number()))
                .findFirst()
                .orElseGet(() -> in(base, Unit.base(dimension)));
        String number =
                plain(said.number().setScale(TYPED_SCALE, RoundingMode.HALF_UP)).toPlainString();
        return (number + " " + word(said.unit())).strip();
    }

    private static Stream<Unit> units(Dimension dimension, BigDecimal base) {
        boolean large = base.abs().compareTo(THOUSAND) >= 0;
        List<Unit> units = switch (dimension) {
            case VOLUME -> List.of(large ? Unit.LITRE : Unit.MILLILITRE, Unit.FLUID_OUNCE, Unit.TEASPOON, Unit.CUP);
            case MASS -> List.of(large ? Unit.KILOGRAM : Unit.GRAM, Unit.OUNCE);
            case LENGTH -> List.of(Unit.CENTIMETRE, Unit.FOOT, Unit.INCH);
            case AREA -> List.of(Unit.SQUARE_CENTIMETRE, Unit.SQUARE_FOOT, Unit.SQUARE_INCH);
            case COUNT -> List.of(Unit.EACH);
        };
        return units.stream();
    }

    private static Said in(BigDecimal base, Unit unit) {
        return new Said(plain(base.divide(unit.factor(), EXACT_ENOUGH)), unit);
    }

    private static boolean isShort(BigDecimal number) {
        return number.scale() <= 2;
    }

    private static Said rounded(BigDecimal base, Dimension dimension) {
        int scale = base.abs().compareTo(BigDecimal.TEN) < 0 ? 2 : 1;
        return new Said(plain(base.setScale(scale, RoundingMode.HALF_UP)), Unit.base(dimension));
    }

    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private static String word(Unit unit) {
        return switch (unit) {
            case FLUID_OUNCE -> "fl oz";
            case SQUARE_CENTIMETRE -> "sq cm";
            case SQUARE_FOOT -> "sq ft";
            case SQUARE_INCH -> "sq in";
            case EACH -> "";
            default -> unit.code();
        };
    }
}
