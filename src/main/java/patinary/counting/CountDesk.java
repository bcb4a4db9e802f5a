package patinary.counting;

import java.util.List;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.Books;
import patinary.supplies.SupplyCount;

/** Records counts, each once however often its form arrives. */
@Service
class CountDesk {

    private final Books books;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;

    CountDesk(Books books, JdbcClient jdbc, TransactionTemplate transaction) {
        this.books = books;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    /**
     * A second count of a supply on one day takes the place of the first: she has looked again.
     *
     * @throws patinary.ledger.Refused where it cannot be true beside the other documents
     */
    void record(SupplyCount count) {
        if (isKnown(count)) {
            return;
        }
        try {
            transaction.executeWithoutResult(status -> {
                sameDay(count).forEach(books::remove);
                books.record(count);
            });
        } catch (DataIntegrityViolationException sentTwiceAtOnce) {
            if (!isKnown(count)) {
                throw sentTwiceAtOnce;
            }
        }
    }

    private List<SupplyCount> sameDay(SupplyCount count) {
        return jdbc.sql("""
                        select c.id from supply_count c join document d on d.id = c.id
                        where c.supply_id = ? and c.place = ? and d.doc_date = ?""").params(count.supplyId(), count.place().name(), count.date()).query(UUID.class).stream()
                .flatMap(id -> books.find(SupplyCount.class, id).stream())
                .toList();
    }

    private boolean isKnown(SupplyCount count) {
        return books.find(SupplyCount.class, count.id()).isPresent();
    }
}
