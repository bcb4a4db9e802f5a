package patinary.spending;

/** A trip over a saved way, as tapped. */
class WayTripForm {

    public String id = "";
    public String date = "";
    public String vehicle = "";
    public boolean oneWay;
    public String way = "";
}
