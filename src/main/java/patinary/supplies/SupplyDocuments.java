package patinary.supplies;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.Books;
import patinary.ledger.Document;

/** Records counts and takings, each once however often its form arrives, and takes them back. */
@Service
class SupplyDocuments {

    private final Books books;
    private final TransactionTemplate transaction;

    SupplyDocuments(Books books, TransactionTemplate transaction) {
        this.books = books;
        this.transaction = transaction;
    }

    /**
     * Records a document unless its id is known already.
     *
     * @throws patinary.ledger.Refused where it cannot be true beside the others
     */
    <D extends Document> void record(Class<D> type, D document) {
        if (books.find(type, document.id()).isPresent()) {
            return;
        }
        try {
            books.record(document);
        } catch (DataIntegrityViolationException sentTwiceAtOnce) {
            if (books.find(type, document.id()).isEmpty()) {
                throw sentTwiceAtOnce;
            }
        }
    }

    @Transactional(readOnly = true)
    <D extends Document> Optional<D> find(Class<D> type, UUID id) {
        return books.find(type, id);
    }

    /** Removes a document; its day is needed to say what was removed. */
    <D extends Document> Optional<LocalDate> remove(Class<D> type, UUID id) {
        return Optional.ofNullable(transaction.execute(status -> books.find(type, id)
                .map(document -> {
                    books.remove(document);
                    return document.date();
                })
                .orElse(null)));
    }
}
