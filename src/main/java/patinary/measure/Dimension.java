package patinary.measure;

/** What a quantity measures. Quantities of different dimensions never mix. */
public enum Dimension {
    /** Base unit: millilitre. */
    VOLUME,
    /** Base unit: gram. */
    MASS,
    /** Base unit: centimetre. */
    LENGTH,
    /** Base unit: square centimetre. */
    AREA,
    /** Base unit: one thing. */
    COUNT
}
