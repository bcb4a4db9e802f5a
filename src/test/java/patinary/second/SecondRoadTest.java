package patinary.second;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The second road by itself: its books hold together, and it knows the handbook's examples. */
class SecondRoadTest {

    private static SecondBooks books;

    @BeforeAll
    static void reckon() throws Exception {
        books = SecondBooks.of(Path.of("db/demo"));
    }

    @AfterAll
    static void close() throws SQLException {
        books.close();
    }

    @Test
    void everyDocumentAddsToZero() throws SQLException {
        assertThat(books.rows("select doc, sum(amount) from entry group by doc having sum(amount) <> 0"))
                .isEmpty();
    }

    @Test
    void landedCostAddsToTheTillTotal() throws SQLException {
        assertThat(books.rows("""
                                select * from (
                                    select r.id, cents(r.till_total) as typed,
                                           (select sum(l.landed) from landing l where l.receipt_id = r.id)
                                           + coalesce((select sum(cents(c.amount)) from receipt_charge c
                                                       where c.receipt_id = r.id and c.kind = 'ROUNDING'), 0) as total
                                    from receipt r)
                                where typed <> total""")).isEmpty();
    }

    @Test
    void stockIsWhatCameInLessWhatWent() throws SQLException {
        long stock = books.number("select sum(amount) from entry where account in ('PIECES', 'BENCH', 'SHELF')");
        long cameIn = books.number("""
                select (select sum(landed) from landing where kind in ('PIECES', 'SUPPLY', 'SHELF'))
                     + (select sum(cents(cost)) from opening_piece) + (select sum(cents(cost)) from opening_supply)
                     - (select sum(cents(amount)) from supplier_return)
                     + (select coalesce(sum(cents(owner)), 0) from sale_piece)
                     - (select coalesce(sum(cents(owner)), 0) from refund_line)
                     + (select coalesce(sum(cents("value")), 0) from supply_gift where for_work = 'yes')""");
        long went = books.number("""
                select sum(amount) from entry
                where account in ('COST_OF_PIECES', 'COST_OF_RETAIL', 'WRITE_OFFS', 'OWN_USE', 'FOUND_AT_COUNT')
                   or account = 'EXPENSE' and supply is not null""");

        assertThat(stock).isEqualTo(cameIn - went);
    }

    /** Of the demo shop: some before the boxes were bought, and tape that a count found shorter. */
    @Test
    void packingIsCostedLateAndCorrectedByACount() throws SQLException {
        assertThat(books.rows("""
                                select d.kind from entry e join doc d on d.id = e.doc
                                where e.account = 'EXPENSE' and e.supply is not null group by d.kind order by d.kind""")).containsExactly(List.of("receipt"), List.of("sale"), List.of("supply_count"));
    }

    @Test
    void whatWasCountedIsThere() throws SQLException {
        assertThat(books.rows("""
                                select c.id from supply_count c
                                join doc d on d.id = c.id
                                join own_books b on b.supply = c.supply_id and b.account = c.place and b.ord <= d.ord
                                group by c.id, c.quantity having sum(b.quantity) <> cast(c.quantity as numeric(30, 14))""")).isEmpty();
    }

    @Test
    void countsComeOutEveryWay() {
        assertThat(books.countNotes())
                .containsKeys("short, on the uses", "short, written off", "over, on the uses", "over, some found");
    }

    @Test
    void sharesAsTheHandbookDoes() {
        List<BigDecimal> weights = List.of(
                new BigDecimal("25.00"), new BigDecimal("15.00"), new BigDecimal("9.99"), new BigDecimal("0.01"));

        assertThat(Cents.shared(4999, weights)).containsExactly(2499, 1500, 999, 1);
    }

    @Test
    void lotGivesOutExactlyItsCost() {
        Layer lot = new Layer(new BigDecimal(3), 1000);

        assertThat(List.of(lot.take(BigDecimal.ONE), lot.take(BigDecimal.ONE), lot.take(BigDecimal.ONE)))
                .containsExactly(333L, 334L, 333L);
    }
}
