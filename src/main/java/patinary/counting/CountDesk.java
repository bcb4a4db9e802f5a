package patinary.counting;

import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Service;
import patinary.ledger.Books;
import patinary.supplies.SupplyCount;

/** Records counts, each once however often its form arrives. */
@Service
class CountDesk {

    private final Books books;

    CountDesk(Books books) {
        this.books = books;
    }

    /** @throws patinary.ledger.Refused where it cannot be true beside the other documents */
    void record(SupplyCount count) {
        if (isKnown(count)) {
            return;
        }
        try {
            books.record(count);
        } catch (DataIntegrityViolationException sentTwiceAtOnce) {
            if (!isKnown(count)) {
                throw sentTwiceAtOnce;
            }
        }
    }

    private boolean isKnown(SupplyCount count) {
        return books.find(SupplyCount.class, count.id()).isPresent();
    }
}
