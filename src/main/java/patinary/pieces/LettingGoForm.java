package patinary.pieces;

/** How a piece leaves without a sale. */
class LettingGoForm {

    public String id = "";
    public String date = "";
    public String reason = "";
    public String note = "";
}
