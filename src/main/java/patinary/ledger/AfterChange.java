package patinary.ledger;

import java.util.Set;
import java.util.UUID;

/**
 * Is told of every change of the books at its end, in its transaction and while the books are locked, when all documents and
 * postings are stored: for what is kept beside the books and must be true to them.
 */
public interface AfterChange {

    /**
     * Documents changed.
     *
     * @param documents every one that was recorded, changed or removed, and every one whose postings are others now
     */
    void booksChanged(Set<UUID> documents);

    /** All postings were derived anew, after documents came by another road. */
    void booksRebuilt();
}
