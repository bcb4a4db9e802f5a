package patinary.bench;

import java.util.List;
import java.util.stream.Stream;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.Move.Destination;
import patinary.ledger.PieceShare;
import patinary.ledger.PotShare;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;

/**
 * The posting rule of a bench entry: supplies move from the bench into the landed cost of the pieces, and with what was
 * kept of a pot back to the bench.
 */
final class BenchPosting {

    private BenchPosting() {}

    static List<Move> moves(BenchContent entry) {
        return Stream.concat(
                        entry.uses().stream().map(use -> use(entry, use)),
                        entry.handling().pots().stream()
                                .filter(pot ->
                                        pot.keptAs() != null && pot.rest().signum() > 0)
                                .map(pot -> new Move.Mixed(pot.keptAs(), pot.rest())))
                .toList();
    }

    private static Move use(BenchContent entry, SupplyUse use) {
        return new Move.SupplyOut(
                use.supplyId(),
                StockPlace.BENCH,
                use.quantity(),
                use.estimated(),
                destination(entry, use.line()),
                use.wears());
    }

    private static Destination destination(BenchContent entry, int line) {
        List<PieceShare> shares = entry.usePieces().stream()
                .filter(part -> part.line() == line)
                .map(part -> new PieceShare(part.pieceId(), part.weight()))
                .toList();
        List<PotShare> aside = entry.handling().usePots().stream()
                .filter(part -> part.line() == line)
                .map(part -> new PotShare(part.supplyId(), part.weight()))
                .toList();
        if (!aside.isEmpty()) {
            return new Destination.Mix(shares, aside);
        }
        // Samples and spills belong to no piece: they are waste of the day on which they happened.
        return shares.isEmpty()
                ? new Destination.To(Account.WRITE_OFFS, Tags.category("waste"))
                : new Destination.Pieces(shares);
    }
}
