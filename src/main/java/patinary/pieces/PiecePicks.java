package patinary.pieces;

import java.util.ArrayList;
import java.util.List;

/** The part of a form in which pieces are ticked, and others found by words to be ticked too. */
public class PiecePicks extends PieceSearch {

    /** The ids of the ticked pieces, as sent. */
    public List<String> pieces = new ArrayList<>();
}
