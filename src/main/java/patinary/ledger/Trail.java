package patinary.ledger;

import java.time.LocalDate;
import java.util.Collection;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * Follows what a transaction changes, so that it can be told later who changed what, and taken back. Whoever is about to
 * write says so first: what stands in the database at that moment is what was there before. What became of it is read when
 * the transaction commits, so that several steps of one transaction are one change; one that rolls back leaves nothing.
 */
public interface Trail {

    /** The table of the settings, which are one thing together with what else she says once for the whole shop. */
    String SETTINGS = "shop";

    /** Settings have no id; this stands for it. */
    UUID THE_SHOP = new UUID(0, 1);

    /**
     * Documents are about to be recorded, changed or removed.
     *
     * @param step the day of a later step of theirs, such as a new price; null where the documents themselves change
     */
    void documents(Collection<? extends Document> documents, @Nullable LocalDate step);

    /**
     * Something else is about to come, change or go.
     *
     * @param table the table of the shop archive that it is a row of
     */
    void thing(String table, UUID id);

    /** The settings are about to change. */
    default void settings() {
        thing(SETTINGS, THE_SHOP);
    }

    /** What is changed in this transaction comes out of a file that was brought in. */
    void outOf(String file);
}
