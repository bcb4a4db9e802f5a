package patinary.labels;

/**
 * What one label says.
 *
 * @param code in letters, under or beside the square
 * @param price the asked price in words; empty where it is not to be printed
 * @param scanned what the square holds
 */
record Label(String code, String title, String price, String scanned) {}
