package patinary.spending;

/** Money carried from one place to another, as typed. */
class MoneyMoveForm extends MoneyForm {

    public String fromPlaceId = "";
    public String toPlaceId = "";
    public String amount = "";
}
