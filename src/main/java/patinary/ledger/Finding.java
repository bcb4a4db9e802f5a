package patinary.ledger;

import org.jspecify.annotations.Nullable;

/**
 * Something that {@link Check} found not to be as it must be.
 *
 * @param what which rule is broken
 * @param document the document concerned, or null where it is about the books as a whole
 * @param subject the line, account, piece, supply or date concerned
 * @param expected what it should be; amounts in minor units
 * @param found what is stored
 */
public record Finding(What what, @Nullable DocumentRef document, String subject, String expected, String found) {

    public enum What {
        /** A document cannot be carried out beside the others. */
        PROBLEM,
        /** A stored posting is not the one that its document gives. */
        POSTING,
        /** A document's postings do not add to zero. */
        DOCUMENT_BALANCE,
        /** The whole ledger does not add to zero. */
        LEDGER_BALANCE,
        /** From this date on, cost that came in is neither there nor accounted for (the design's second invariant). */
        COST_KEPT,
        /** What is left of a supply by the postings is not what costing says. */
        STOCK,
        /** Landed cost of a piece in stock by the postings is not what costing says. */
        PIECE,
        /** The list of uses without a cost is not what costing says. */
        UNCOSTED,
        /** A move that is kept by supply, piece or money place is not one of its document. */
        STRAND,
        /** What is carried forward of a supply to a day is not what its moves give. */
        CARRIED,
        /** A figure kept beside the books is not what documents and postings give. */
        KEPT_FIGURE
    }

    static Finding problem(Problem problem) {
        String subject = problem.subject() == null ? "" : problem.subject().toString();
        return new Finding(
                What.PROBLEM, problem.document(), subject, "", problem.reason().name());
    }

    static Finding books(What what, String subject, Object expected, Object found) {
        return new Finding(what, null, subject, expected.toString(), found.toString());
    }
}
