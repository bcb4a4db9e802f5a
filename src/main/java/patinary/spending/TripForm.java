package patinary.spending;

/** A trip, as typed. An empty rate takes the rate of the trip's own date. */
class TripForm extends MoneyForm {

    public String startPlace = "";
    public String destination = "";
    public String purpose = "";
    public String miles = "";
    public String rate = "";
    public String vehicle = "";
}
