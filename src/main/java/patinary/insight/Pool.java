package patinary.insight;

/**
 * What is known of a group of pieces.
 *
 * @param pieces all there are
 * @param tries pieces that had their full time on offer
 * @param net what sold pieces left of their sales, in minor units
 * @param off what fees, postage and packaging took off these sales, in minor units
 * @param supplies used on finished pieces, in minor units
 * @param minutes spent on finished pieces
 * @param bought what finished pieces cost before the bench, in minor units
 */
record Pool(long pieces, Tries tries, Moments net, Moments off, Moments supplies, Moments minutes, Moments bought) {

    static final Pool NONE =
            new Pool(0, Tries.NONE, Moments.NONE, Moments.NONE, Moments.NONE, Moments.NONE, Moments.NONE);

    Pool plus(Pool other) {
        return new Pool(
                pieces + other.pieces,
                tries.plus(other.tries),
                net.plus(other.net),
                off.plus(other.off),
                supplies.plus(other.supplies),
                minutes.plus(other.minutes),
                bought.plus(other.bought));
    }
}
