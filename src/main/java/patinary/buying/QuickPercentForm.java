package patinary.buying;

/** A button for a percentage as typed. */
class QuickPercentForm {

    public String name = "";
    public String percent = "";
}
