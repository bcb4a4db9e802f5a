package patinary.ledger;

/** Which calculation made the postings; raised whenever the same documents would come to other postings than before. */
public final class Calculation {

    public static final int VERSION = 1;

    private Calculation() {}
}
