package patinary.measure;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A unit of measure with its exact factor to the base unit of its dimension.
 *
 * <p>Factors follow from the exact definitions in NIST Handbook 44, Appendix C: 1 in = 2.54 cm, 1 gal = 231 in³,
 * 1 lb = 453.59237 g. They are not the rounded kitchen values (cup 240 mL), which must never be mixed with these. Volumes
 * are US customary liquid measure; the ounce is the avoirdupois ounce of mass, the fluid ounce is volume.
 */
public enum Unit {
    MILLILITRE("ml", Dimension.VOLUME, "1"),
    LITRE("l", Dimension.VOLUME, "1000"),
    TEASPOON("tsp", Dimension.VOLUME, "4.92892159375"),
    TABLESPOON("tbsp", Dimension.VOLUME, "14.78676478125"),
    FLUID_OUNCE("floz", Dimension.VOLUME, "29.5735295625"),
    CUP("cup", Dimension.VOLUME, "236.5882365"),
    PINT("pint", Dimension.VOLUME, "473.176473"),
    QUART("quart", Dimension.VOLUME, "946.352946"),
    GALLON("gallon", Dimension.VOLUME, "3785.411784"),
    GRAM("g", Dimension.MASS, "1"),
    KILOGRAM("kg", Dimension.MASS, "1000"),
    OUNCE("oz", Dimension.MASS, "28.349523125"),
    POUND("lb", Dimension.MASS, "453.59237"),
    CENTIMETRE("cm", Dimension.LENGTH, "1"),
    MILLIMETRE("mm", Dimension.LENGTH, "0.1"),
    METRE("m", Dimension.LENGTH, "100"),
    INCH("in", Dimension.LENGTH, "2.54"),
    FOOT("ft", Dimension.LENGTH, "30.48"),
    YARD("yd", Dimension.LENGTH, "91.44"),
    SQUARE_CENTIMETRE("cm2", Dimension.AREA, "1"),
    SQUARE_METRE("m2", Dimension.AREA, "10000"),
    SQUARE_INCH("in2", Dimension.AREA, "6.4516"),
    SQUARE_FOOT("ft2", Dimension.AREA, "929.0304"),
    SQUARE_YARD("yd2", Dimension.AREA, "8361.2736"),
    EACH("each", Dimension.COUNT, "1");

    private static final Map<String, Unit> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Unit::code, Function.identity()));

    private final String code;

    private final Dimension dimension;

    private final BigDecimal factor;

    Unit(String code, Dimension dimension, String factor) {
        this.code = code;
        this.dimension = dimension;
        this.factor = new BigDecimal(factor);
    }

    /** The short name in data files and tables. It never changes. */
    public String code() {
        return code;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** How many base units one of these is, exactly. */
    public BigDecimal factor() {
        return factor;
    }

    /** The unit of exactly this code, or empty. */
    public static Optional<Unit> withCode(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }

    /**
     * The unit of a code found in a data file.
     *
     * @throws IllegalArgumentException where no unit has this code
     */
    public static Unit ofCode(String code) {
        return withCode(code).orElseThrow(() -> new IllegalArgumentException("No unit has the code " + code));
    }

    /** The unit with factor one: mL, g, cm, cm² or each. */
    public static Unit base(Dimension dimension) {
        return switch (dimension) {
            case VOLUME -> MILLILITRE;
            case MASS -> GRAM;
            case LENGTH -> CENTIMETRE;
            case AREA -> SQUARE_CENTIMETRE;
            case COUNT -> EACH;
        };
    }
}
