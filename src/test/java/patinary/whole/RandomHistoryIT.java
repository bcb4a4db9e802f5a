package patinary.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.ledger.AlsoChecked;
import patinary.ledger.Books;
import patinary.ledger.Check;
import patinary.ledger.Document;
import patinary.ledger.Refused;
import patinary.measure.Dimension;
import patinary.money.Amount;
import patinary.pieces.NewPieces;
import patinary.selling.Channel;
import patinary.selling.Channels;
import patinary.shop.MoneyPlace;
import patinary.shop.MoneyPlaces;
import patinary.supplies.Bundle;
import patinary.supplies.Bundles;
import patinary.supplies.Supplies;
import patinary.supplies.Supply;
import patinary.supplies.SupplyLine;
import patinary.supplies.SupplyLines;
import patinary.testing.ShopTest;

/**
 * Random histories on the real database, by both costing methods: typed in any order they give the same
 * postings; every document and the whole ledger add to zero; what is removed leaves nothing. What is kept beside the books is
 * what the books give: after every change of some histories, at the end of all.
 */
@ShopTest
class RandomHistoryIT {

    /** More by hand with {@code -Dpatinary.histories=200}; the pure property draws ten thousand in every build. */
    private static final int HISTORIES = Integer.getInteger("patinary.histories", 24);

    /** After each change of two histories in twenty, one by each method, everything kept is worked out anew. */
    private static final int CLOSELY = 20;

    private static final String ROWS = """
            select document_id, line, doc_date, account, place_id, category, piece_id, supply_id, origin_id, estimated,
                   amount_minor, cast(quantity as numeric(30, 6)) as quantity
            from posting order by document_id, line""";

    @Autowired
    private Books books;

    @Autowired
    private NewPieces newPieces;

    @Autowired
    private MoneyPlaces places;

    @Autowired
    private SupplyLines supplyLines;

    @Autowired
    private Supplies supplies;

    @Autowired
    private Bundles bundles;

    @Autowired
    private Channels channels;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private AlsoChecked kept;

    @Autowired
    private Check check;

    private boolean closely;

    private RandomShop.Things things = new RandomShop.Things(new UUID(0, 0), new UUID(0, 0), List.of(), List.of());

    @BeforeEach
    void stockTheShop() {
        UUID cash = UUID.randomUUID();
        places.save(new MoneyPlace(cash, "Cash box", MoneyPlace.Kind.CASH));
        UUID channel = UUID.randomUUID();
        channels.save(new Channel(channel, "Stall", cash, false, List.of()));
        UUID line = UUID.randomUUID();
        supplyLines.save(new SupplyLine(line, "Chalk paints", "an invented maker"));
        List<UUID> bought = Stream.of("Pond green", "Ink blue", "Clear wax")
                .map(name -> supply(line, name))
                .toList();
        List<UUID> pieces = IntStream.range(0, 6)
                .mapToObj(i -> newPieces.create("Piece " + i, null, null))
                .toList();
        List<UUID> pots = Stream.of("Kept green", "Kept blue")
                .map(name -> supply(line, name))
                .toList();
        UUID bundle = UUID.randomUUID();
        List<Bundle.Part> parts = IntStream.range(0, bought.size())
                .mapToObj(i -> new Bundle.Part(i + 1, bought.get(i), "1 ml", BigDecimal.ONE))
                .toList();
        bundles.save(new Bundle(bundle, new Bundle.Facts("Starter set", Amount.of(1000), parts)));
        things = new RandomShop.Things(cash, channel, bought, pieces, pots, bundle);
    }

    @Test
    void typedInAnyOrderTheBooksAreTheSame() {
        for (int seed = 1; seed <= HISTORIES; seed++) {
            method(seed % 2 == 0 ? "FIFO" : "AVERAGE");
            closely = seed % CLOSELY < 2;
            List<List<Object>> inOrder = type(sorted(RandomShop.history(seed, things)));
            assertThat(unbalanced()).as("seed %s", seed).isEmpty();
            assertThat(kept.findings()).as("seed %s", seed).isEmpty();
            removeAll(seed);
            List<List<Object>> inAnyOrder = type(shuffled(seed));
            assertThat(inAnyOrder).as("seed %s", seed).isEqualTo(inOrder);
            assertThat(check.run()).as("seed %s", seed).isEmpty();
            books.rederive();
            assertThat(rows()).as("rebuilt, seed %s", seed).isEqualTo(inOrder);
            removeAll(seed);
        }
    }

    /** Types all documents, putting off those that cannot be true yet. */
    private List<List<Object>> type(List<Document> documents) {
        List<Document> waiting = new ArrayList<>(documents);
        while (!waiting.isEmpty()) {
            int before = waiting.size();
            waiting.removeIf(document -> looked(recorded(document)));
            assertThat(waiting.size())
                    .as("documents that are never accepted: %s", waiting)
                    .isLessThan(before);
        }
        return rows();
    }

    /** What is kept is compared before the next change could put right what this one missed. */
    private boolean looked(boolean changed) {
        if (closely && changed) {
            assertThat(kept.findings()).isEmpty();
        }
        return changed;
    }

    private boolean recorded(Document document) {
        try {
            books.record(document);
            return true;
        } catch (Refused | DataIntegrityViolationException tooEarly) {
            return false;
        }
    }

    /** Refunds and sales first refuse to go, then go; at the end nothing is left of any posting. */
    private void removeAll(long seed) {
        List<UUID> left = new ArrayList<>(jdbc.sql("select id from document order by id")
                .query(UUID.class)
                .list());
        Collections.shuffle(left, new Random(seed));
        while (!left.isEmpty()) {
            left.removeIf(document -> looked(removed(document)));
        }
        assertThat(rows()).isEmpty();
        assertThat(jdbc.sql("select count(*) from uncosted_use")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    private boolean removed(UUID id) {
        try {
            transaction.executeWithoutResult(
                    state -> books.remove(books.find(Document.class, id).orElseThrow()));
            return true;
        } catch (Refused | DataIntegrityViolationException tooEarly) {
            return false;
        }
    }

    private List<Document> shuffled(long seed) {
        List<Document> documents = new ArrayList<>(RandomShop.history(seed, things));
        Collections.shuffle(documents, new Random(seed));
        return documents;
    }

    private static List<Document> sorted(List<Document> documents) {
        return documents.stream()
                .sorted(java.util.Comparator.comparing(Document::ref))
                .toList();
    }

    private List<List<Object>> rows() {
        return jdbc.sql(ROWS).query().listOfRows().stream()
                .map(row -> (List<Object>) new ArrayList<>(row.values()))
                .toList();
    }

    private List<UUID> unbalanced() {
        return jdbc.sql("select document_id from posting group by document_id having sum(amount_minor) <> 0")
                .query(UUID.class)
                .list();
    }

    private void method(String name) {
        jdbc.sql("update shop set costing_method = ?").param(name).update();
    }

    private UUID supply(UUID line, String name) {
        UUID id = UUID.randomUUID();
        supplies.save(new Supply(id, new Supply.Facts(line, name, Dimension.VOLUME, null, null, List.of(), List.of())));
        return id;
    }
}
