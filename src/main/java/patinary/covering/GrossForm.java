package patinary.covering;

/** A reported gross as typed. */
class GrossForm {

    public String id = "";
    public long version;
    public String place = "";
    public String from = "";
    public String to = "";
    public String amount = "";
    public boolean withPassedTax;
    public String note = "";
}
