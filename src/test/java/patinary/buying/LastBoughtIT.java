package patinary.buying;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.ledger.Books;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.pieces.NewPieces;
import patinary.testing.ShopTest;

/** What the page for buying offers first. Goods and shops are invented. */
@ShopTest
class LastBoughtIT {

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Books books;

    @Autowired
    private NewPieces pieces;

    @Autowired
    private BuyLists lists;

    @Test
    void whatWasTypedLastStandsFirstAndTheRestByName() {
        UUID box = word("object_kind", "Box");
        UUID tray = word("object_kind", "Tray");
        word("object_kind", "Armchair");
        word("object_kind", "Zither case");
        UUID rustic = word("style", "Rustic");
        word("style", "Plain");
        UUID near = source("Near");
        UUID far = source("Far");
        source("Attic");
        LocalDate day = LocalDate.of(2025, 3, 1);
        // The later typed is of an earlier day: what counts is when it was typed.
        typed(day.plusDays(5), near, pieces.create("One", box, rustic), "2025-04-01T10:00:00Z");
        typed(day, far, pieces.create("Two", tray, null), "2025-04-02T10:00:00Z");

        BuyLists.Offered offered = lists.offered();
        assertThat(texts(offered.kinds())).containsExactly("Tray", "Box", "Armchair", "Zither case");
        assertThat(texts(offered.styles())).containsExactly("Rustic", "Plain");
        assertThat(offered.sources()).extracting(BuyLists.SourceRow::text).containsExactly("Far", "Near", "Attic");
        assertThat(lists.kinds()).isEqualTo(offered.kinds());
        assertThat(lists.styles()).isEqualTo(offered.styles());
        assertThat(lists.sources()).isEqualTo(offered.sources());
    }

    private static List<String> texts(List<BuyLists.Row> rows) {
        return rows.stream().map(BuyLists.Row::text).toList();
    }

    private UUID word(String table, String name) {
        UUID id = UUID.randomUUID();
        jdbc.sql("insert into " + table + " (id, name, version) values (?, ?, 0)")
                .params(id, name)
                .update();
        return id;
    }

    private UUID source(String name) {
        UUID id = UUID.randomUUID();
        jdbc.sql("insert into source (id, name, note, resale_certificate, version) values (?, ?, '', '', 0)")
                .params(id, name)
                .update();
        return id;
    }

    private void typed(LocalDate day, UUID source, UUID piece, String at) {
        Amount price = Amount.of(500);
        ReceiptLine line = new ReceiptLine(
                1, LineKind.PIECES, "Thing", BigDecimal.ONE, price, null, null, false, null, null, null);
        Receipt receipt = new Receipt(
                UUID.randomUUID(),
                new ReceiptContent(
                        day,
                        "",
                        source,
                        null,
                        price,
                        List.of(line),
                        List.of(new ReceiptPiece(1, piece, BigDecimal.ONE)),
                        List.of(),
                        List.of(),
                        List.of(new Tender(1, Way.OWNER, null, price))));
        books.record(receipt);
        jdbc.sql("update document set recorded_at = ? where id = ?")
                .params(OffsetDateTime.parse(at), receipt.id())
                .update();
    }
}
