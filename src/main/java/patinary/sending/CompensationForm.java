package patinary.sending;

/** What a carrier paid for a loss as typed. */
class CompensationForm {
    public String id = "";
    public String date = "";
    public String amount = "";
    public String place = "";
}
