package patinary.history;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.exchange.Content;
import patinary.exchange.KeptRows;
import patinary.figures.Figures;
import patinary.ledger.Books;
import patinary.ledger.Document;
import patinary.shop.CurrentShop;

/** Writes what an act changed as it was before, and has derived from it what follows, and no more. */
@Component
class PuttingBack {

    private static final String PIECE = "piece";
    private static final String SUPPLY = "supply";

    private final Changes changes;
    private final KeptRows rows;
    private final Keeper keeper;
    private final Books books;
    private final Figures figures;
    private final CurrentShop shop;

    PuttingBack(Changes changes, KeptRows rows, Keeper keeper, Books books, Figures figures, CurrentShop shop) {
        this.changes = changes;
        this.rows = rows;
        this.keeper = keeper;
        this.books = books;
        this.figures = figures;
        this.shop = shop;
    }

    /** What others name comes back before them and goes after them. */
    void putBack(List<Change> all) {
        List<Change> inOrder = all.stream()
                .sorted(Comparator.comparingInt(change -> KeptRows.place(change.kind())))
                .toList();
        inOrder.forEach(keeper::takingBack);
        List<Document> recorded = reversed(inOrder)
                .filter(change -> change.before() == null && isDocument(change))
                .flatMap(change -> books.find(Document.class, change.subject()).stream())
                .toList();
        Set<UUID> others = inOrder.stream()
                .filter(change -> change.before() != null && isDocument(change))
                .map(Change::subject)
                .collect(Collectors.toSet());
        if (recorded.isEmpty() && others.isEmpty()) {
            write(inOrder);
        } else {
            books.takeBack(recorded, others, () -> write(inOrder));
        }
        keepFigures(inOrder);
        reversed(inOrder)
                .filter(change -> change.before() == null && !isDocument(change))
                .forEach(change -> rows.remove(change.kind(), change.subject()));
    }

    private void write(List<Change> inOrder) {
        changes.forget();
        inOrder.forEach(this::write);
        // Writing looked things up, the settings for instance, while they were still as the act left them.
        changes.forget();
        shop.changed();
    }

    private void write(Change change) {
        @Nullable Content before = change.before();
        if (before != null) {
            rows.put(change.kind(), change.subject(), change.after(), before);
        }
    }

    /** What the figures do not learn from documents. */
    private void keepFigures(List<Change> inOrder) {
        inOrder.stream()
                .filter(change -> change.kind().equals(PIECE) && change.after() == null)
                .forEach(change -> figures.pieceMade(change.subject()));
        inOrder.stream()
                .filter(change -> change.kind().equals(SUPPLY) && movesToAnotherLine(change))
                .forEach(change -> figures.supplyMoved(change.subject()));
        if (inOrder.stream().anyMatch(OfSettings::changesCosting)) {
            books.rederive();
        }
    }

    private static boolean movesToAnotherLine(Change change) {
        @Nullable Content before = change.before();
        @Nullable Content after = change.after();
        return before != null
                && after != null
                && !before.cell(SUPPLY, "supply_line_id").equals(after.cell(SUPPLY, "supply_line_id"));
    }

    private static Stream<Change> reversed(List<Change> inOrder) {
        List<Change> copy = new ArrayList<>(inOrder);
        Collections.reverse(copy);
        return copy.stream();
    }

    private static boolean isDocument(Change change) {
        return KeptRows.kind(change.kind()).isPresent();
    }
}
