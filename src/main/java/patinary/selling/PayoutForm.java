package patinary.selling;

/** A payout as typed. */
class PayoutForm {
    public String id = "";
    public String date = "";
    public String from = "";
    public String to = "";
    public String amount = "";
    public String fee = "";
    public String note = "";
}
