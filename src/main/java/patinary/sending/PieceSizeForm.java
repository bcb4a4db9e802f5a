package patinary.sending;

/** Size and weight of a piece as typed. */
class PieceSizeForm {
    public String size = "";
    public String weight = "";
}
