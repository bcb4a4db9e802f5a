package patinary.insight;

/**
 * Pieces that had their full time, and how many of them sold within it.
 *
 * @param pieces distinct pieces whose horizon is over, sold or not
 * @param sold of them, those that sold within the horizon
 */
record Tries(long pieces, long sold) {

    static final Tries NONE = new Tries(0, 0);

    Tries plus(Tries other) {
        return new Tries(pieces + other.pieces, sold + other.sold);
    }

    double share() {
        return (double) sold / pieces;
    }
}
