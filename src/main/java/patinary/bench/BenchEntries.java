package patinary.bench;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.Books;

/** Records bench entries, each once however often its form arrives, and changes or removes them. */
@Service
class BenchEntries {

    /** A stored entry. */
    record Stored(UUID id, long version, BenchContent content) {}

    private final Books books;
    private final KeptPots pots;
    private final TransactionTemplate transaction;

    BenchEntries(Books books, KeptPots pots, TransactionTemplate transaction) {
        this.books = books;
        this.pots = pots;
        this.transaction = transaction;
    }

    @Transactional(readOnly = true)
    Optional<Stored> find(UUID id) {
        return books.read(BenchEntry.class, id).map(entry -> new Stored(entry.id(), entry.version(), entry.content()));
    }

    /**
     * Records an entry unless its id is known already.
     *
     * @return whether it is new
     * @throws patinary.ledger.Refused where it cannot be true beside the others
     */
    boolean record(UUID id, BenchContent content) {
        if (isKnown(id)) {
            return false;
        }
        try {
            transaction.executeWithoutResult(status -> {
                pots.make(id, content);
                books.record(new BenchEntry(id, content));
            });
            return true;
        } catch (DataIntegrityViolationException sentTwiceAtOnce) {
            if (!isKnown(id)) {
                throw sentTwiceAtOnce;
            }
            return false;
        }
    }

    /**
     * Replaces what an entry says.
     *
     * @throws OptimisticLockingFailureException where it was changed, or removed, since the form was drawn
     * @throws patinary.ledger.Refused where it cannot be true beside the others
     */
    void change(UUID id, long version, BenchContent content) {
        transaction.executeWithoutResult(status -> {
            BenchEntry entry = books.find(BenchEntry.class, id)
                    .filter(stored -> stored.version() == version)
                    .orElseThrow(() -> new OptimisticLockingFailureException("Changed since the form was drawn"));
            List<UUID> kept = pots.of(id);
            pots.make(id, content);
            entry.rewrite(content);
            books.changed(entry);
            pots.clear(id, kept);
        });
    }

    /** Removes an entry; nothing happens where it is gone already. */
    void remove(UUID id) {
        transaction.executeWithoutResult(status -> {
            List<UUID> kept = pots.of(id);
            books.find(BenchEntry.class, id).ifPresent(books::remove);
            pots.clear(id, kept);
        });
    }

    private boolean isKnown(UUID id) {
        return books.find(BenchEntry.class, id).isPresent();
    }
}
