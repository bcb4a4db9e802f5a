package patinary.phone;

/** What the probe page asks: an amount the owner puts in, and an error to make on purpose. */
class ProbeForm {
    public String id = "";
    public String day = "2025-03-01";
    public String amount = "";
    public String note = "";
    public String trouble = "";
}
