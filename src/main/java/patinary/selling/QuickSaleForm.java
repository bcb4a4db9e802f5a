package patinary.selling;

/** A sale at the stall as typed: one offer, its price, the cash box. */
class QuickSaleForm {
    public String id = "";
    public String offer = "";
    public String date = "";
    public String price = "";
    public String channel = "";
    public String place = "";
}
