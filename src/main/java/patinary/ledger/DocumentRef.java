package patinary.ledger;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.UUID;

/**
 * Names a document and its place in the canonical order: date, then kind, then permanent id.
 *
 * @param id the permanent id, also the key under which a phone may send it twice
 * @param kind what it is
 * @param date the local calendar date it counts for
 */
public record DocumentRef(UUID id, DocumentKind kind, LocalDate date) implements Comparable<DocumentRef> {

    /** UUIDs are compared as text, as both databases do, and not as Java's signed halves. */
    private static final Comparator<DocumentRef> CANONICAL = Comparator.comparing(DocumentRef::date)
            .thenComparing(DocumentRef::kind)
            .thenComparing(ref -> ref.id().toString());

    @Override
    public int compareTo(DocumentRef other) {
        return CANONICAL.compare(this, other);
    }
}
