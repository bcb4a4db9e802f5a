package patinary.ledger;

import java.util.Comparator;
import java.util.UUID;

/**
 * A move as part of one strand: all moves of one supply, one piece or one money place.
 *
 * @param strand the supply, the piece or the money place
 * @param number the place of the move among those of its document, from 0
 */
record StrandMove(UUID strand, DocumentRef document, int number, Move move) {

    /** In the order in which the books follow them. */
    static final Comparator<StrandMove> CANONICAL =
            Comparator.comparing(StrandMove::document).thenComparing(StrandMove::number);

    /** The move itself, whichever of its strands led to it. */
    Step step() {
        return new Step(document.id(), number);
    }

    /** One of the moves of a document. */
    record Step(UUID document, int number) {}
}
