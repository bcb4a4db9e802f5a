package patinary.ledger;

import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A posting with where it came from, so that what one move of a document gave can be derived anew without its other moves.
 *
 * @param move the place in the document's moves of the one that posted it, from 0
 * @param meant the piece that the cost was for where it landed on another, because that piece had been made part of it
 */
record Entry(Posting posting, int move, @Nullable UUID meant) {

    DocumentRef document() {
        return posting.document();
    }

    Account account() {
        return posting.account();
    }

    /** The piece that a cost was for, wherever it landed; nothing where it is not about a piece. */
    @Nullable
    UUID intended() {
        return meant == null ? posting.tags().piece() : meant;
    }

    /** Whether it is part of what a piece cost, and not of what it was sold for. */
    boolean isPieceCost() {
        return account().bearsPieces() && posting.tags().piece() != null;
    }

    boolean isOf(UUID place) {
        return account() == Account.MONEY && Objects.equals(posting.tags().place(), place);
    }
}
