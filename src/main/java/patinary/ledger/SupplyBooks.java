package patinary.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** All supplies at both places, and what each document took of them. */
final class SupplyBooks {

    private record Key(UUID supply, StockPlace place) {}

    private record Taking(UUID document, Key key) {}

    private final Map<Key, SupplyBook> books = new HashMap<>();
    private final Map<Taking, List<Use>> takings = new HashMap<>();
    private final StockMethod method;
    private final Journal journal;
    private final PieceBook pieces;

    SupplyBooks(StockMethod method, Journal journal, PieceBook pieces) {
        this.method = method;
        this.journal = journal;
        this.pieces = pieces;
    }

    Journal journal() {
        return journal;
    }

    PieceBook pieces() {
        return pieces;
    }

    SupplyBook at(UUID supply, StockPlace place) {
        return books.computeIfAbsent(new Key(supply, place), k -> new SupplyBook(supply, place, method, this));
    }

    void take(Move.SupplyOut move) {
        Use use = at(move.supply(), move.place()).take(move);
        takings.computeIfAbsent(
                        new Taking(journal.document().id(), new Key(move.supply(), move.place())),
                        t -> new ArrayList<>())
                .add(use);
    }

    void back(Move.SupplyBack move) {
        Taking taking = new Taking(move.sale(), new Key(move.supply(), move.place()));
        at(move.supply(), move.place()).back(move.quantity(), takings.getOrDefault(taking, List.of()));
    }

    List<Replay.StockLeft> left() {
        return books.entrySet().stream()
                .map(entry -> new Replay.StockLeft(
                        entry.getKey().supply(),
                        entry.getKey().place(),
                        entry.getValue().bookQuantity(),
                        entry.getValue().cost()))
                .toList();
    }

    List<Replay.Uncosted> uncosted() {
        return books.values().stream()
                .flatMap(book -> book.waiting().stream())
                .map(use -> new Replay.Uncosted(
                        use.document(), use.move().supply(), use.move().place(), use.waiting()))
                .toList();
    }
}
