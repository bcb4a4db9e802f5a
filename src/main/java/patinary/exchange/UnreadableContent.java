package patinary.exchange;

/** Kept rows name a table, or hold a cell, that this version of the program cannot read. */
public class UnreadableContent extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** @param what the table or cell, for the log only */
    UnreadableContent(String what) {
        super(what);
    }
}
