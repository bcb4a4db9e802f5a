package patinary.buying;

import java.util.UUID;

/** A form gave a new piece the id of one that is already there. */
final class PieceTaken extends RuntimeException {

    private static final long serialVersionUID = 1L;

    PieceTaken(UUID piece) {
        super("Piece " + piece + " is already there");
    }
}
