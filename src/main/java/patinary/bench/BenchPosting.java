package patinary.bench;

import java.util.List;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.Move.Destination;
import patinary.ledger.PieceShare;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;

/** The posting rule of a bench entry: supplies move from the bench into the landed cost of the pieces. */
final class BenchPosting {

    private BenchPosting() {}

    static List<Move> moves(BenchContent entry) {
        return entry.uses().stream().map(use -> use(entry, use)).toList();
    }

    private static Move use(BenchContent entry, SupplyUse use) {
        List<PieceShare> shares = entry.usePieces().stream()
                .filter(part -> part.line() == use.line())
                .map(part -> new PieceShare(part.pieceId(), part.weight()))
                .toList();
        // Samples and spills belong to no piece: they are waste of the day on which they happened.
        Destination to = shares.isEmpty()
                ? new Destination.To(Account.WRITE_OFFS, Tags.category("waste"))
                : new Destination.Pieces(shares);
        return new Move.SupplyOut(use.supplyId(), StockPlace.BENCH, use.quantity(), use.estimated(), to);
    }
}
