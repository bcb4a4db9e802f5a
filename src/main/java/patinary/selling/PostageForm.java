package patinary.selling;

/** Carriage and packing as typed. */
class PostageForm {
    public String id = "";
    public String date = "";
    public String place = "";
    public String carriage = "";
    public String packing = "";
    public String direction = "OUT";
    public String note = "";
}
