package patinary.photos;

import java.util.UUID;

/**
 * What a photo is of.
 *
 * @param kind a piece, a paper, or nothing yet
 * @param id the piece's or the document's; all zeros where it is nothing yet
 */
record Subject(Kind kind, UUID id) {

    enum Kind {
        PIECE,
        DOCUMENT,
        /** The photo waits to be matched with a piece. */
        NONE
    }

    static final Subject NOTHING_YET = new Subject(Kind.NONE, new UUID(0, 0));
}
