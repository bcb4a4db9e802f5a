package patinary.ledger;

import java.util.UUID;

/** One row of a strand, with its move as text, so that equal numbers are equal however they are written. */
record StrandRow(UUID strand, DocumentRef document, int number, String move) {

    static StrandRow of(StrandMove move) {
        return new StrandRow(move.strand(), move.document(), move.number(), MoveText.of(move.move()));
    }
}
