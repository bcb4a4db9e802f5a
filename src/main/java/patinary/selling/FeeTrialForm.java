package patinary.selling;

/** A trial sum of what remains of a price, as typed. */
class FeeTrialForm {
    public String price = "";
    public String shipping = "";
    public String outlay = "";
    public String tax = "";
    public boolean shippingTaxed;

    /** Whether it was sent; an untouched one is filled with what is usual. */
    public boolean tried;

    /** The first price of the table, the last, and how far they lie apart. */
    public String from = "";

    public String to = "";
    public String step = "";
}
