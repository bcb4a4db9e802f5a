package patinary.buying;

import java.util.UUID;

/** A piece cannot be taken off its receipt, because something else speaks of it; nothing was stored. */
class PieceInUse extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final UUID piece;

    PieceInUse(UUID piece, RuntimeException cause) {
        super("Still spoken of: piece " + piece, cause);
        this.piece = piece;
    }

    UUID piece() {
        return piece;
    }
}
