package patinary.sending;

/** How a sale is sent, as typed. */
class SendingForm {
    public long version;
    public boolean pickedUp;
    public String sentFrom = "";
    public String destination = "";
    public String weight = "";
    public String size = "";
    public String service = "";
    public String tracking = "";
}
