package patinary.pieces;

import java.util.ArrayList;
import java.util.List;

/** The part of a form in which pieces are ticked, and others found by words to be ticked too. */
public class PiecePicks {

    /** The ids of the ticked pieces, as sent. */
    public List<String> pieces = new ArrayList<>();

    /** What she looks for, as typed. */
    public String pieceWords = "";

    /** The words by which the pieces of the page she sent were found. */
    public String foundBy = "";

    /**
     * Whether she wants to see other pieces and not yet to be done with the form: by the button, or because she typed words that nothing was
     * looked for by, as by the enter key.
     */
    public boolean looksForPieces(String act) {
        return act.equals("find")
                || !pieceWords.isBlank() && !pieceWords.strip().equals(foundBy.strip());
    }
}
