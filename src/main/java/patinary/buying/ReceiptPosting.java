package patinary.buying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;
import patinary.money.Amount;
import patinary.money.Shares;

/** The posting rule of a receipt; docs/handbook/posting-rules-buying.md. */
final class ReceiptPosting {

    private ReceiptPosting() {}

    static List<Move> moves(ReceiptContent receipt) {
        ReceiptSums sums = receipt.sums();
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < receipt.lines().size(); i++) {
            moves.addAll(line(receipt, receipt.lines().get(i), sums.landed().get(i)));
        }
        moves.add(new Move.Post(Account.ROUNDING, Tags.NONE, sums.rounding()));
        receipt.payments().forEach(payment -> moves.add(payment.paidOut(receipt.sourceId())));
        return moves;
    }

    private static List<Move> line(ReceiptContent receipt, ReceiptLine line, Amount landed) {
        return switch (line.kind()) {
            case PIECES -> pieces(receipt, line, landed);
            case SUPPLY -> List.of(supply(line, StockPlace.BENCH, landed));
            case SHELF -> List.of(supply(line, StockPlace.SHELF, landed));
            case EXPENSE ->
                List.of(new Move.Post(
                        Account.EXPENSE, Tags.category(line.category()).withEstimated(line.about()), landed));
            case HOME -> List.of(new Move.Post(Account.OWNER_OUT, Tags.category("home"), landed));
            case CHARITY -> List.of(new Move.Post(Account.OWNER_OUT, Tags.category("charity"), landed));
        };
    }

    private static Move supply(ReceiptLine line, StockPlace place, Amount landed) {
        return new Move.SupplyIn(
                Objects.requireNonNull(line.supplyId()), place, line.supplyQuantity(), landed, line.about());
    }

    private static List<Move> pieces(ReceiptContent receipt, ReceiptLine line, Amount landed) {
        List<ReceiptPiece> pieces = receipt.pieces().stream()
                .filter(piece -> piece.line() == line.line())
                .sorted(Comparator.comparing(piece -> piece.pieceId().toString()))
                .toList();
        List<Amount> costs =
                Shares.split(landed, pieces.stream().map(ReceiptPiece::weight).toList());
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < costs.size(); i++) {
            moves.add(new Move.PieceIn(pieces.get(i).pieceId(), costs.get(i), line.about()));
        }
        return moves;
    }
}
