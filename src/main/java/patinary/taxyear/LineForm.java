package patinary.taxyear;

/** Where an account and category is to go, and for how long. */
class LineForm {

    public String account = "";
    public String category = "";
    public String line = "";
    public String years = "";
}
