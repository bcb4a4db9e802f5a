package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.Books;
import patinary.ledger.Document;
import patinary.web.NotFound;

/** Brings the documents of selling into the books and reads them back, each within one transaction. */
@Service
class SellingDocuments {

    private final Books books;
    private final TransactionTemplate transaction;

    SellingDocuments(Books books, TransactionTemplate transaction) {
        this.books = books;
        this.transaction = transaction;
    }

    /**
     * Records a document once: the form that made it carries its id, so that a form sent twice is one document.
     *
     * @throws patinary.ledger.Refused where it cannot be true beside the others
     */
    void record(Document document) {
        if (exists(document)) {
            return;
        }
        try {
            books.record(document);
        } catch (DataIntegrityViolationException failure) {
            // The same form may have been sent twice at the same moment; anything else is a failure.
            if (!exists(document)) {
                throw failure;
            }
        }
    }

    /** Does several things to the books, all or none. */
    void together(Runnable work) {
        transaction.executeWithoutResult(status -> work.run());
    }

    /**
     * Changes a document as it stands now.
     *
     * @throws NotFound where it is not there
     */
    <D extends Document> void changeNow(Class<D> type, UUID id, Consumer<D> change) {
        transaction.executeWithoutResult(status -> {
            D document = books.find(type, id).orElseThrow(() -> new NotFound(type.getSimpleName() + " " + id));
            change.accept(document);
            books.changed(document);
        });
    }

    /** What is asked of a document as it is stored. */
    <D extends Document, T> Optional<T> read(Class<D> type, UUID id, Function<D, T> reading) {
        return books.read(type, id).map(reading);
    }

    /**
     * Changes a document.
     *
     * @param version the version that the change was made on; another one means that somebody was quicker
     */
    <D extends Document> void change(Class<D> type, UUID id, long version, Consumer<D> change) {
        transaction.executeWithoutResult(status -> {
            D document = current(type, id, version);
            change.accept(document);
            books.changed(document);
        });
    }

    /**
     * Takes a later step of a document, whose own date may lie in a sealed year.
     *
     * @param day the day of the step
     */
    <D extends Document> void step(Class<D> type, UUID id, long version, LocalDate day, Consumer<D> step) {
        transaction.executeWithoutResult(status -> {
            D document = current(type, id, version);
            step.accept(document);
            books.continued(document, day);
        });
    }

    /**
     * Takes a later step of several documents on one day, all or none.
     *
     * @param steps by document
     * @throws NotFound where one of them is not there
     */
    <D extends Document> void steps(Class<D> type, LocalDate day, Map<UUID, Consumer<D>> steps) {
        transaction.executeWithoutResult(status -> {
            List<D> several = new ArrayList<>();
            steps.forEach((id, step) -> {
                D document = books.find(type, id).orElseThrow(() -> new NotFound(type.getSimpleName() + " " + id));
                step.accept(document);
                several.add(document);
            });
            books.continuedAll(several, day);
        });
    }

    /** Removes a document. */
    <D extends Document> void remove(Class<D> type, UUID id) {
        transaction.executeWithoutResult(status ->
                books.remove(books.find(type, id).orElseThrow(() -> new NotFound(type.getSimpleName() + " " + id))));
    }

    private <D extends Document> D current(Class<D> type, UUID id, long version) {
        D document = books.find(type, id).orElseThrow(() -> new NotFound(type.getSimpleName() + " " + id));
        if (document.version() != version) {
            throw new OptimisticLockingFailureException(type.getSimpleName() + " " + id + " is stale");
        }
        return document;
    }

    private boolean exists(Document document) {
        return books.find(document.getClass(), document.id()).isPresent();
    }
}
