package patinary.spending;

/** An expense, as typed. */
class ExpenseForm extends MoneyForm {

    public String category = "";
    public String payee = "";
    public String placeId = "";
    public String amount = "";
}
