package patinary.spending;

import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.ledger.Document;
import patinary.ledger.Refused;
import patinary.web.NotFound;

/** Records, changes and removes money documents through the books. */
@Service
class MoneyBook {

    private final Books books;
    private final JdbcClient jdbc;

    MoneyBook(Books books, JdbcClient jdbc) {
        this.books = books;
        this.jdbc = jdbc;
    }

    /**
     * Records a document; one whose id is known already was sent twice and is left as it is.
     *
     * @throws Refused where the books refuse it
     */
    @Transactional
    public void record(Document document) {
        boolean known = jdbc.sql("select count(*) from document where id = ?")
                        .param(document.id())
                        .query(Long.class)
                        .single()
                > 0;
        if (!known) {
            books.record(document);
        }
    }

    /**
     * Changes a document.
     *
     * @throws Refused where the books refuse it
     * @throws OptimisticLockingFailureException where it changed after the form was drawn
     */
    @Transactional
    public <D extends Document> void change(Class<D> type, UUID id, long version, Consumer<D> rewriting) {
        D document = find(type, id);
        if (document.version() != version) {
            throw new OptimisticLockingFailureException("The document changed in between: " + id);
        }
        rewriting.accept(document);
        books.changed(document);
    }

    /** @throws Refused where the books refuse it */
    @Transactional
    public <D extends Document> void remove(Class<D> type, UUID id) {
        books.remove(find(type, id));
    }

    /** @throws NotFound where there is none of this type */
    @Transactional(readOnly = true)
    public <D extends Document> D find(Class<D> type, UUID id) {
        return books.find(type, id).orElseThrow(() -> new NotFound(type.getSimpleName() + " " + id));
    }

    /** The words under which other income was recorded, the most used first. */
    @Transactional(readOnly = true)
    public List<String> incomeCategories() {
        return jdbc.sql("select category from other_income group by category order by count(*) desc, category")
                .query(String.class)
                .list();
    }

    /** How many receipts name a trip; while there are any it cannot be removed. */
    @Transactional(readOnly = true)
    public long receiptsOfTrip(UUID trip) {
        return jdbc.sql("select count(*) from receipt where trip_id = ?")
                .param(trip)
                .query(Long.class)
                .single();
    }
}
