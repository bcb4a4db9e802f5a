package patinary.slips;

/**
 * One word as the reading program saw it.
 *
 * @param left from the left edge of the prepared picture, in pixels
 * @param confidence the program's own, 0 to 100
 */
record SlipWord(int left, int top, int width, int height, double confidence, String text) {}
