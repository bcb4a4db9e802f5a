package patinary.arrangements;

/** A supply that came free, as typed. */
class GiftForm {

    public String id = "";
    public String date = "";
    public String giver = "";
    public String supply = "";
    public String quantity = "";
    public String value = "";
    public boolean forWork;
    public String note = "";
}
