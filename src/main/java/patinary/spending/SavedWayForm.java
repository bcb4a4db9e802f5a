package patinary.spending;

/** A way that is driven often, as typed. */
class SavedWayForm {

    public String id = "";
    public long version;
    public String startPlace = "";
    public String destination = "";
    public String purpose = "";
    public String miles = "";
}
