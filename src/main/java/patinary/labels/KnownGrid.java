package patinary.labels;

/**
 * A grid that can be chosen.
 *
 * @param key how an address names it: a word for those that came with the program, an id for her own
 * @param name her own name; empty for those that came with the program, which are named by their measures
 */
record KnownGrid(String key, String name, LabelGrid grid) {

    /** Whether it is one of hers, which she may change. */
    public boolean isOwn() {
        return !name.isEmpty();
    }
}
