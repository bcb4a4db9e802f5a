package patinary.packing;

/** A market day, as typed. */
class PackingForm {

    public long version;
    public String title = "";
    public String day = "";
    public String channel = "";
    public String note = "";
}
