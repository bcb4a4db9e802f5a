package patinary.spending;

/** What an odometer read in a year, as typed. */
class OdometerForm {

    public long version = -1;
    public String start = "";
    public String end = "";
    public String commuting = "";
}
