package patinary.figures;

/** What a change touches: kinds of things whose figures are kept, each with the table that holds the touched ids. */
enum Touched {
    DOCUMENT("select id from document"),
    SALE("select id from sale"),
    OFFER("select id from offer"),
    PIECE("select id from piece"),
    SUPPLY("select id from supply");

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

    /** The ids of all things of this kind, in one column. */
    String all() {
        return all;
    }

    private String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
