package patinary.taxyear;

import java.util.Locale;

/** What is asked before a year is closed, in the order in which it is best put right. */
public enum ClosingItem {
    /** The two ways to the cost of goods come to different amounts. */
    DISAGREE,
    /** A money place that cannot owe is below zero on the last day. */
    BELOW_ZERO,
    /** Supplies were used whose receipt is not there. */
    UNCOSTED,
    /** Pieces for which nothing was paid. */
    NO_COST,
    /** Supplies on the bench that were used by eye and not counted for long. */
    BY_EYE,
    /** Cash that was not counted for long. */
    CASH,
    /** Payouts that do not say what they cover, or not to the cent. */
    PAYOUTS,
    /** Reported gross that is not explained to the cent. */
    GROSS,
    /** Amounts that the tax table has no line for. */
    UNMAPPED,
    /** Bills that are not paid. */
    OWED_BY,
    /** Sales that are not paid. */
    OWED_TO;

    /** The end of its message keys and of its address. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
