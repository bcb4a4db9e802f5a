package patinary.bringing;

/**
 * What a row is, as she said.
 *
 * @param what pieces, a supply from the retail shelf, or nothing to be brought in
 * @param codes the codes of the pieces
 * @param supply the id of the supply
 * @param content how much of the supply one holds, as it can be typed
 */
record RowChoice(What what, String codes, String supply, String content) {

    enum What {
        PIECES,
        SUPPLY,
        OUT
    }

    static final RowChoice OUT = new RowChoice(What.OUT, "", "", "");

    static RowChoice pieces(String codes) {
        return new RowChoice(What.PIECES, codes, "", "");
    }

    static RowChoice supply(String id, String content) {
        return new RowChoice(What.SUPPLY, "", id, content);
    }

    /** As the page's list of answers has it. */
    String value() {
        return switch (what) {
            case OUT -> "out";
            case PIECES -> "piece:" + codes;
            case SUPPLY -> "supply:" + supply + ":" + content;
        };
    }
}
