package patinary.pieces;

import java.util.Set;

/** The part of a form in which pieces, or offers of them, are found by words, so that a big shop need not list them all. */
public class PieceSearch {

    /** What a form is sent with by its main button, and by the enter key. */
    private static final Set<String> MAIN = Set.of("", "save", "sums");

    /** What she looks for, as typed. */
    public String pieceWords = "";

    /** The words by which what stands on the page she sent was found. */
    public String foundBy = "";

    /**
     * Whether she wants to see other pieces and not yet to be done with the form: by the button of the search, or because she typed words
     * that nothing was looked for by, as with the enter key.
     *
     * @param act what the button says that the form was sent by
     */
    public boolean looksForPieces(String act) {
        return act.equals("find")
                || MAIN.contains(act)
                        && !pieceWords.isBlank()
                        && !pieceWords.strip().equals(foundBy.strip());
    }
}
