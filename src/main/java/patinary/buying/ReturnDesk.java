package patinary.buying;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;

/** Records and removes returns to suppliers, and finds what can go back. */
@Service
@Transactional
class ReturnDesk {

    /** A return in the list; the amount in minor units. */
    record Row(UUID id, LocalDate date, @Nullable String source, long amount) {}

    private static final String LIST = """
            select r.id, d.doc_date, s.name, r.amount_minor
            from supplier_return r join document d on d.id = r.id left join source s on s.id = r.source_id
            order by d.doc_date desc, d.id""";

    private final Books books;
    private final JdbcClient jdbc;

    ReturnDesk(Books books, JdbcClient jdbc) {
        this.books = books;
        this.jdbc = jdbc;
    }

    /** Records a return; one that is already there under this id is left as it is. */
    void record(UUID id, SupplierReturn.Content content) {
        if (books.find(SupplierReturn.class, id).isEmpty()) {
            books.record(new SupplierReturn(id, content));
        }
    }

    @Transactional(readOnly = true)
    Optional<SupplierReturn.Content> find(UUID id) {
        return books.find(SupplierReturn.class, id).map(SupplierReturn::content);
    }

    void remove(UUID id) {
        books.find(SupplierReturn.class, id).ifPresent(books::remove);
    }

    @Transactional(readOnly = true)
    List<Row> all() {
        return jdbc.sql(LIST)
                .query((row, number) -> new Row(
                        row.getObject("id", UUID.class),
                        row.getDate("doc_date").toLocalDate(),
                        row.getString("name"),
                        row.getLong("amount_minor")))
                .list();
    }
}
