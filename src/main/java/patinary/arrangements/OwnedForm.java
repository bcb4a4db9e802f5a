package patinary.arrangements;

/** A piece of somebody else, as typed. */
class OwnedForm {

    public String id = "";
    public long version;
    public String title = "";
    public String owner = "";
    public String since = "";
    /** Of a commission: what is agreed for the work. */
    public String price = "";

    public String due = "";
    /** Paid ahead for a commission, when it is agreed; may stay empty. */
    public String deposit = "";

    public String place = "";
    /** Of a piece sold for its owner: the owner's part of the price, in percent; or the next. */
    public String percent = "";
    /** A fixed amount that the owner gets. */
    public String share = "";

    public String note = "";
}
