package patinary.selling;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.Move.Destination;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;
import patinary.ledger.Tender;

/** The posting rule of a sale; docs/handbook/posting-rules.md. */
final class SalePosting {

    /** The category of db/reference/expense-categories.csv that packing material bought as an expense has too. */
    static final String PACKAGING = "packaging";

    /** What tax tables map as receipts of the shop, though it is the price of no thing. */
    static final String TIP = "tip";

    private SalePosting() {}

    static List<Move> moves(SaleContent sale) {
        List<Move> moves = new ArrayList<>();
        for (SaleSums.Part part : sale.sums().parts()) {
            moves.addAll(income(part));
        }
        if (!sale.taxPassed()) {
            moves.add(new Move.Post(Account.SALES_TAX_DUE, Tags.NONE, sale.tax().negated()));
        }
        moves.add(new Move.Post(
                Account.OTHER_INCOME,
                Tags.category(TIP),
                sale.extras().tipOrNone().negated()));
        moves.add(new Move.Post(
                Account.MONEY, Tags.place(sale.feePlaceId()), sale.fee().negated()));
        sale.payments().stream().map(Tender::paidIn).forEach(moves::add);
        moves.addAll(goods(sale));
        sale.wraps().stream().map(SalePosting::packed).forEach(moves::add);
        return moves;
    }

    private static List<Move> income(SaleSums.Part part) {
        Tags tags = part.tags();
        return List.of(
                new Move.Post(Account.SALES, tags, part.price().negated()),
                new Move.Post(Account.SHIPPING_CHARGED, tags, part.shipping().negated()),
                new Move.Post(Account.FEES, tags.withCategory("sale"), part.fee()));
    }

    private static List<Move> goods(SaleContent sale) {
        List<Move> moves = new ArrayList<>();
        sale.pieces().forEach(piece -> moves.addAll(owed(piece)));
        Set<UUID> kept = sale.undelivered().stream().map(SalePiece::pieceId).collect(Collectors.toSet());
        sale.sums().parts().stream()
                .map(SaleSums.Part::piece)
                .filter(Objects::nonNull)
                .filter(piece -> !kept.contains(piece))
                .forEach(piece -> moves.add(new Move.PieceOut(piece, Account.COST_OF_PIECES)));
        for (SaleLine line : sale.lines()) {
            if (line.supplyId() != null) {
                Destination sold = new Destination.To(Account.COST_OF_RETAIL, Tags.NONE);
                moves.add(new Move.SupplyOut(line.supplyId(), StockPlace.SHELF, line.supplyQuantity(), false, sold));
            }
        }
        return moves;
    }

    /** A piece that is not hers costs what its owner gets, from the moment it is sold. */
    private static List<Move> owed(SalePiece piece) {
        return piece.owner() == null
                ? List.of()
                : List.of(
                        new Move.PieceIn(piece.pieceId(), piece.owner(), false),
                        new Move.Post(
                                Account.PAYABLE,
                                Tags.piece(piece.pieceId()),
                                piece.owner().negated()));
    }

    /** A cost of selling, not of the goods: docs/handbook/posting-rules-selling.md says why. */
    private static Move packed(Wrap wrap) {
        Destination spent = new Destination.To(Account.EXPENSE, Tags.category(PACKAGING));
        return new Move.SupplyOut(wrap.supplyId(), StockPlace.BENCH, wrap.quantity(), wrap.estimated(), spent);
    }
}
