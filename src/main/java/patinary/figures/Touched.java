package patinary.figures;

/**
 * What a change touches: kinds of things whose figures are kept, each with the table that holds the touched ids. They stand in the order in
 * which their figures rest on each other.
 */
enum Touched {
    DOCUMENT("select id as document_id from document"),
    SUPPLY("select id as supply_id from supply"),
    SALE("select id as sale_id from sale"),
    OFFER("select id as offer_id from offer"),
    PIECE("select id as piece_id from piece");

    private final String all;

    Touched(String all) {
        this.all = all;
    }

    /** The table of the touched ids; every transaction leaves it empty. */
    String table() {
        return "touched_" + word();
    }

    /** The column of the id, in the table of the touched ids and in every kept figure of this kind. */
    String key() {
        return word() + "_id";
    }

    /** The ids of all things of this kind, in one column that is called as the key. */
    String all() {
        return all;
    }

    private String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
