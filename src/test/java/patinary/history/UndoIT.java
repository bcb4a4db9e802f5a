package patinary.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import patinary.exchange.Progress;
import patinary.exchange.ShopArchive;
import patinary.ledger.Books;
import patinary.ledger.Check;
import patinary.ledger.Document;
import patinary.ledger.Finding;
import patinary.ledger.Refused;
import patinary.ledger.Trail;
import patinary.testing.CleanShop;
import patinary.testing.ShopTest;
import patinary.web.Window;

/**
 * Undoing derives what it touches and no more: what is derived afterwards is what was derived before, row by row, for documents of
 * every kind of the demo shop.
 */
@ShopTest
class UndoIT {

    private static final long SEED = 20260430;
    private static final int OF_EACH_KIND = 2;

    /** What the books and the figures keep of documents. */
    private static final List<String> DERIVED = List.of(
            "posting",
            "uncosted_use",
            "strand_move",
            "document_piece",
            "document_sale",
            "document_stock",
            "document_profit",
            "supply_stock",
            "piece_stock",
            "piece_line",
            "sale_part",
            "offer_state",
            "piece_state",
            "piece_figures");

    @Autowired
    private ApplicationContext program;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Books books;

    @Autowired
    private Undo undo;

    @Autowired
    private Changes changes;

    @BeforeEach
    void demo() throws Exception {
        CleanShop.empty(program);
        program.getBean(ShopArchive.class).load(Path.of("db", "demo"), Progress.SILENT);
    }

    @Test
    void whatWasRemovedComesBackWithAllThatFollowedFromIt() {
        Map<String, List<String>> before = derived();
        List<String> kinds = new ArrayList<>();
        for (Map.Entry<String, List<UUID>> kind : documents().entrySet()) {
            int done = 0;
            for (UUID id : kind.getValue()) {
                if (done < OF_EACH_KIND && isRemoved(id)) {
                    done++;
                    UUID back = undo.undo(latest());
                    assertSame(derived(), before, kind.getKey());
                    undo.undo(back);
                    assertThat(books.find(Document.class, id)).isEmpty();
                    undo.undo(latest());
                    assertSame(derived(), before, kind.getKey());
                }
            }
            if (done > 0) {
                kinds.add(kind.getKey());
            }
        }
        assertThat(kinds).as("kinds of which something could be removed").hasSizeGreaterThan(15);
        assertThat(program.getBean(Check.class).run()).isEmpty();
    }

    /** An act that changed nothing the books count with has nothing derived. */
    @Test
    void whatTouchesNoDocumentRenewsNothing() {
        assertThat(jdbc.sql("update posting set amount_minor = amount_minor + 1 where account = 'PIECES' and line = 0"
                                + " and document_id = (select id from opening)")
                        .update())
                .isOne();
        UUID place = jdbc.sql("select id from money_place order by id fetch first 1 rows only")
                .query(UUID.class)
                .single();
        program.getBean(TransactionTemplate.class).executeWithoutResult(status -> {
            program.getBean(Trail.class).thing("money_place", place);
            jdbc.sql("update money_place set name = 'Tin under the bench' where id = ?")
                    .param(place)
                    .update();
        });

        undo.undo(latest());

        assertThat(jdbc.sql("select name from money_place where id = ?")
                        .param(place)
                        .query(String.class)
                        .single())
                .isNotEqualTo("Tin under the bench");
        assertThat(program.getBean(Check.class).run())
                .as("the posting that deriving all would have put right")
                .extracting(Finding::what)
                .contains(Finding.What.POSTING);
    }

    private boolean isRemoved(UUID id) {
        try {
            transaction.executeWithoutResult(
                    status -> books.find(Document.class, id).ifPresent(books::remove));
            return true;
        } catch (Refused | DataIntegrityViolationException others) {
            return false;
        }
    }

    /** All documents by kind, in an order that the seed draws. */
    private Map<String, List<UUID>> documents() {
        Map<String, List<UUID>> documents = new TreeMap<>();
        jdbc.sql("select kind, id from document order by id").query(row -> {
            documents
                    .computeIfAbsent(row.getString("kind"), kind -> new ArrayList<>())
                    .add(row.getObject("id", UUID.class));
        });
        Random random = new Random(SEED);
        documents.values().forEach(ids -> Collections.shuffle(ids, random));
        return documents;
    }

    private UUID latest() {
        return changes.page(new Changes.Wanted(null, null, "", ""), Window.of(1))
                .rows()
                .get(0)
                .act();
    }

    private Map<String, List<String>> derived() {
        Map<String, List<String>> rows = new TreeMap<>();
        for (String table : DERIVED) {
            rows.put(
                    table,
                    jdbc.sql("select * from " + table).query().listOfRows().stream()
                            .map(row -> new TreeMap<>(row).toString())
                            .sorted()
                            .toList());
        }
        return rows;
    }

    private static void assertSame(Map<String, List<String>> found, Map<String, List<String>> meant, String kind) {
        meant.forEach((table, rows) -> assertThat(found.get(table).equals(rows))
                .as("%s after a %s came back", table, kind)
                .isTrue());
    }
}
