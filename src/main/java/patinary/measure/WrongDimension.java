package patinary.measure;

import java.util.List;
import java.util.Locale;

/**
 * A quantity measures one thing where another is wanted, for instance a cup for a supply used by area. There is no
 * conversion between them without the product's own density or thickness, so it is refused rather than guessed.
 */
public final class WrongDimension extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final Unit unit;

    private final Dimension wanted;

    WrongDimension(Unit unit, Dimension wanted) {
        super(unit.code() + " measures " + unit.dimension() + ", not " + wanted);
        this.unit = unit;
        this.wanted = wanted;
    }

    /** The unit that was given. */
    public Unit unit() {
        return unit;
    }

    /** What it should have measured. */
    public Dimension wanted() {
        return wanted;
    }

    /** {@code measure.error.wrongDimension}, in English "{0} measures {1}; this supply is used by {2}". */
    public String messageKey() {
        return "measure.error.wrongDimension";
    }

    /** Three message keys: of the unit, of what it measures and of what is wanted. */
    public List<String> arguments() {
        return List.of("measure.unit." + unit.code(), key(unit.dimension()), key(wanted));
    }

    private static String key(Dimension dimension) {
        return "measure.dimension." + dimension.name().toLowerCase(Locale.ROOT);
    }
}
