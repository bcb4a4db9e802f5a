package patinary.spending;

/** Income that is no sale, as typed. */
class OtherIncomeForm extends MoneyForm {

    public String category = "";
    public String payer = "";
    public String placeId = "";
    public String amount = "";
    /** Empty: nothing was kept. */
    public String fee = "";
}
