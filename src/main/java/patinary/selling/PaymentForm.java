package patinary.selling;

/** Money from a buyer as typed. */
class PaymentForm {
    public String id = "";
    public String date = "";
    public String buyer = "";
    public String place = "";
    public String amount = "";
    public String note = "";
}
