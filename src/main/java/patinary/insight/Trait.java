package patinary.insight;

import java.util.Locale;

/** What pieces can be told apart by, whichever page they stand on. */
enum Trait {
    STYLE,
    KIND,
    LINE,
    /** What it is made of: the surface that was worked on. */
    MATERIAL,
    /** A finish that was done on it. */
    FINISH,
    /** Where it was ever on offer, not where it sold of its offers; a sale without any implies an offer there. */
    CHANNEL,
    /** A third of the first asked prices of the whole shop each. */
    PRICE,
    /** The quarter of the year in which it was first on offer. */
    SEASON;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
