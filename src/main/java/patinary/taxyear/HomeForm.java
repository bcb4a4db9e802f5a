package patinary.taxyear;

/** The business use of a home, as typed. */
class HomeForm {

    public long version = -1;
    public String feet = "";
    public String months = "12";
    public String note = "";
}
