package patinary.bench;

/** How a use is shared over the pieces it went on. */
enum ShareMode {
    /** The same for each. */
    EQUAL,
    /** By the surface of each. */
    AREA,
    /** In the proportion that was typed. */
    TYPED,
    /** On no piece: a sample, a spill. */
    NONE
}
