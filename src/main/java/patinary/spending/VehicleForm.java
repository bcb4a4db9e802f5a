package patinary.spending;

/** A vehicle, as typed. */
class VehicleForm {

    public String id = "";
    public long version;
    public String name = "";
    public String inService = "";
    public String note = "";
}
