package patinary.spending;

/** What every money document is asked, as typed. The id is chosen with the blank form, so that sending twice records once. */
abstract class MoneyForm {

    public String id = "";
    public long version;
    public String date = "";
    public String note = "";
}
