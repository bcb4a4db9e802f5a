package patinary.spending;

/** Money the owner put in or took out, as typed. */
class OwnerMoneyForm extends MoneyForm {

    public String direction = "";
    public String placeId = "";
    public String amount = "";
}
