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
import patinary.money.Amount;

/** What is owed for receipts or since the first day, and its payment. */
@Service
@Transactional
class BillDesk {

    /** An amount owed, by the document that it arose with. */
    record Owed(
            UUID document,
            boolean opening,
            LocalDate date,
            @Nullable String source,
            long amount) {}

    /** A payment that is recorded. */
    record Paid(UUID id, @Nullable UUID receipt, LocalDate date, Amount amount) {}

    private static final String OWED = """
            select o.receipt_id, o.amount_minor, d.doc_date,
                   coalesce(s.name, (select min(po.owner) from sale_piece sp join piece_owner po on po.piece_id = sp.piece_id
                                     where sp.sale_id = d.id)) as name,
                   case when d.kind = 'OPENING' then true else false end as from_opening
            from owed_by_shop o
            join document d on d.id = o.receipt_id
            left join receipt r on r.id = o.receipt_id
            left join source s on s.id = r.source_id""";

    private final Books books;
    private final JdbcClient jdbc;

    BillDesk(Books books, JdbcClient jdbc) {
        this.books = books;
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    List<Owed> owed() {
        return jdbc.sql(OWED + " order by d.doc_date, d.id")
                .query((row, number) -> new Owed(
                        row.getObject("receipt_id", UUID.class),
                        row.getBoolean("from_opening"),
                        row.getDate("doc_date").toLocalDate(),
                        row.getString("name"),
                        row.getLong("amount_minor")))
                .list();
    }

    /** What is owed by one document. */
    @Transactional(readOnly = true)
    Amount owed(UUID document) {
        return owed().stream()
                .filter(row -> row.document().equals(document))
                .map(row -> Amount.of(row.amount()))
                .collect(Amount.sum());
    }

    /** Records a payment; one that is already there under this id is left as it is. */
    void pay(UUID id, LocalDate date, String note, UUID receipt, UUID place, Amount amount) {
        if (books.find(BillPaid.class, id).isEmpty()) {
            books.record(new BillPaid(id, date, note, receipt, place, amount));
        }
    }

    @Transactional(readOnly = true)
    Optional<Paid> find(UUID id) {
        return books.find(BillPaid.class, id)
                .map(bill -> new Paid(bill.id(), bill.receiptId(), bill.date(), bill.amount()));
    }

    void remove(UUID id) {
        books.find(BillPaid.class, id).ifPresent(books::remove);
    }
}
