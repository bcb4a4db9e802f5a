package patinary.survival;

/** How a stay on offer ended so far. */
public enum Exit {
    SOLD,
    /** Taken down, let go or broken: it will not sell from this offer. */
    WITHDRAWN,
    /** Still on offer on the day of the reckoning: what it will do is not known. */
    OPEN
}
