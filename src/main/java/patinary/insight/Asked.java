package patinary.insight;

import java.time.LocalDate;

/**
 * What the pages about pieces are asked for in their address, so that all of them keep it alike. What is left out is empty, and
 * what cannot be read is not asked for.
 */
final class Asked {

    /** The first day. */
    public String from = "";

    /** The last day. */
    public String to = "";

    /** A word of {@link Only}. */
    public String only = "";

    /** Another, to which the pieces must belong as well. */
    public String also = "";

    static Asked of(String only, String also) {
        Asked asked = new Asked();
        asked.only = only;
        asked.also = also;
        return asked;
    }

    Period period(LocalDate today) {
        return Period.asked(from, to, today);
    }
}
