package patinary.ledger;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Why a document cannot be true beside the others. Recording it is refused with this reason.
 *
 * @param document the document that cannot be carried out
 * @param reason what is wrong
 * @param subject the piece or supply concerned
 */
public record Problem(
        DocumentRef document, Reason reason, @Nullable UUID subject) {

    public enum Reason {
        /** A piece leaves that has left already: sold twice, or sold after it was let go. */
        PIECE_ALREADY_GONE,
        /** A piece comes back that was not sold. */
        PIECE_NOT_SOLD,
        /** More of a supply comes back than that sale took. */
        MORE_BACK_THAN_SOLD,
        /** The document is dated in a year that is sealed. */
        YEAR_SEALED,
        /** A mixed pot would be an ingredient of itself. */
        POT_OF_ITSELF,
        /** The document's amounts do not add to zero. */
        UNBALANCED,
        /** Another kind of document has its id: a form was sent with the number of another form. */
        ID_TAKEN;

        /** The key of the message that tells a person. */
        public String messageKey() {
            return "ledger.problem." + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }
}
