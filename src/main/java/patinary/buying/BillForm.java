package patinary.buying;

/** A payment of what is owed, as typed. */
class BillForm {

    public String id = "";
    public String date = "";
    public String amount = "";
    public String place = "";
    public String note = "";
}
