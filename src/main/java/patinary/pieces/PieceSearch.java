package patinary.pieces;

/** The part of a form in which pieces, or offers of them, are found by words, so that a big shop need not list them all. */
public class PieceSearch {

    /** What the first button of such a form says, which nobody sees and the enter key takes. */
    public static final String ENTER = "enter";

    /** What she looks for, as typed. */
    public String pieceWords = "";

    /** The words by which what stands on the page she sent was found. */
    public String foundBy = "";

    /**
     * Whether she wants to see other pieces and not yet to be done with the form: by the button of the search, or by the enter key with other
     * words than those that something was looked for by. What she saves by its own button is saved, whatever stands in the search.
     *
     * @param act what the button says that the form was sent by
     */
    public boolean looksForPieces(String act) {
        return act.equals("find") || act.equals(ENTER) && !pieceWords.strip().equals(foundBy.strip());
    }
}
