package patinary.selling;

/** A sale at the stall as typed. What was got in cash is not kept: it only tells the change. */
class StallForm {
    public String id = "";
    /** The offer it was picked from, or empty; it only lends its title, and the weights of a set. */
    public String offer = "";

    public String codes = "";
    public String price = "";
    public String got = "";
    /** Empty: today. */
    public String date = "";

    public String channel = "";
    public String place = "";
    public String tax = "";
}
