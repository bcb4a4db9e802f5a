package patinary.setaside;

/** A payment of tax, as typed. */
class PaidForm {

    public String id = "";
    public String date = "";
    public String amount = "";
    public String note = "";
}
