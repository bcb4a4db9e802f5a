package patinary.selling;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;
import patinary.money.Amount;

/** The posting rule of a refund; docs/handbook/posting-rules.md. */
final class RefundPosting {

    private RefundPosting() {}

    static List<Move> moves(RefundContent refund) {
        Tags sale = Tags.origin(refund.saleId());
        List<Move> moves = new ArrayList<>();
        for (RefundLine line : refund.lines()) {
            Tags tags = new Tags(null, null, line.pieceId(), line.supplyId(), null, refund.saleId(), false);
            moves.add(new Move.Post(Account.REFUNDS, tags, line.amount()));
            if (line.owner() != null && line.pieceId() != null) {
                moves.add(new Move.PieceIn(line.pieceId(), line.owner().negated(), false));
                moves.add(new Move.Post(Account.PAYABLE, tags, line.owner()));
            }
            if (line.comesBack()) {
                moves.add(back(refund, line));
            }
        }
        moves.add(new Move.Post(Account.REFUNDS, sale.withCategory("shipping"), refund.shipping()));
        moves.add(new Move.Post(Account.SALES_TAX_DUE, sale, refund.tax()));
        moves.add(new Move.Post(
                Account.FEES, sale.withCategory("sale"), refund.feeBack().negated()));
        moves.add(new Move.Post(Account.MONEY, Tags.place(refund.feePlaceId()), refund.feeBack()));
        moves.add(paid(refund, sale));
        return moves;
    }

    private static Move back(RefundContent refund, RefundLine line) {
        if (line.pieceId() != null) {
            return new Move.PieceBack(line.pieceId(), refund.saleId());
        }
        return new Move.SupplyBack(
                Objects.requireNonNull(line.supplyId()),
                StockPlace.SHELF,
                Objects.requireNonNull(line.quantity()),
                refund.saleId());
    }

    private static Move paid(RefundContent refund, Tags sale) {
        Amount out = refund.total().negated();
        return switch (refund.way()) {
            case PLACE -> new Move.Post(Account.MONEY, Tags.place(refund.placeId()), out);
            case OWED -> new Move.Post(Account.RECEIVABLE, sale, out);
            case STORE_CREDIT -> new Move.Post(Account.STORE_CREDIT_GIVEN, sale, out);
            case DEPOSIT, OWNER -> throw new IllegalStateException("No way to give a buyer money back");
        };
    }
}
