package patinary.spending;

/** Sales tax paid over, as typed. */
class SalesTaxPaidForm extends MoneyForm {

    public String period = "";
    public String placeId = "";
    public String amount = "";
    public String taxPlace = "";
    public String from = "";
    public String to = "";
    public String allowance = "";
}
