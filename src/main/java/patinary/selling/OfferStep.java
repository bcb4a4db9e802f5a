package patinary.selling;

/** One step in the life of an offer, as typed. */
class OfferStep {
    /** Below zero until the page has been drawn. */
    public long version = -1;

    public String act = "";
    public String date = "";
    public String price = "";

    /** Whether the others of its group take the step too. */
    public boolean others;
}
