package patinary.selling;

import java.util.ArrayList;
import java.util.List;
import patinary.pieces.PieceSearch;

/** An offer as typed. */
class OfferForm extends PieceSearch {
    public String id = "";
    public long version;
    public String date = "";
    public String title = "";
    public String codes = "";
    public String add = "";
    public String weights = "";
    public String price = "";

    /** Whether several pieces are a {@code SET}, or {@code ALIKE} and sold one by one. */
    public String together = "SET";

    /** The offer that these pieces are put beside, as more of the same. */
    public String like = "";

    public List<String> channels = new ArrayList<>();
    public String note = "";

    /** Takes the piece that is chosen among the others, by whichever button it was sent. */
    void takeChosen() {
        codes = (codes + " " + add).strip();
        add = "";
    }
}
