package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.money.Percent;

/** Pieces sold for their owners, as docs/handbook/posting-rules-arrangements.md works them by hand. */
class OwnerSharesTest {

    private static final UUID ID = new UUID(7, 7);

    /** Of the worked sale the jug is somebody's, who gets 60 % of its 9.09: 5.45 (5.454). The tray is her own. */
    @Test
    void theShareIsOwedAndIsTheCostOfThePiece() {
        SaleContent sale = WorkedSale.sale(true).owing(Map.of(WorkedSale.JUG, new OwnerTerms(Percent.of("60"), null)));
        List<Move> moves = SalePosting.moves(sale);

        assertThat(sale.owedToOwners()).isEqualTo(Amount.of(545));
        assertThat(sale.owedFor(WorkedSale.JUG)).isEqualTo(Amount.of(545));
        assertThat(sale.owedFor(WorkedSale.TRAY)).isNull();
        assertThat(posts(moves))
                .containsEntry(Account.SALES, -5000L)
                .containsEntry(Account.PAYABLE, -545L)
                .containsEntry(Account.MONEY, 5600L - 590);
        // The cost reaches the piece before the piece leaves, so that it leaves with it.
        assertThat(moves.stream().filter(move -> !(move instanceof Move.Post)).toList())
                .startsWith(new Move.PieceIn(WorkedSale.JUG, Amount.of(545), false))
                .contains(new Move.PieceOut(WorkedSale.JUG, Account.COST_OF_PIECES));
        assertThat(balanced(moves)).isZero();
    }

    @Test
    void aFixedShareIsTheSameWhateverThePrice() {
        assertThat(new OwnerTerms(null, Amount.of(1200)).of(Amount.of(900))).isEqualTo(Amount.of(1200));
        assertThat(new OwnerTerms(Percent.of("33.3"), null).of(Amount.of(1000))).isEqualTo(Amount.of(333));
        assertThat(new OwnerTerms(Percent.of("50"), null).of(Amount.of(1))).isEqualTo(Amount.of(1));
    }

    @Test
    void whatComesBackIsNoLongerOwed() {
        RefundContent refund = new RefundContent(
                LocalDate.of(2025, 3, 20),
                "",
                ID,
                Way.PLACE,
                WorkedSale.PLACE,
                Amount.ZERO,
                Amount.ZERO,
                Amount.ZERO,
                null,
                List.of(new RefundLine(1, WorkedSale.JUG, null, null, Amount.of(909), true)
                        .noLongerOwing(Amount.of(545))));
        List<Move> moves = RefundPosting.moves(refund);
        assertThat(posts(moves)).containsEntry(Account.PAYABLE, 545L).containsEntry(Account.REFUNDS, 909L);
        assertThat(moves.stream().filter(move -> !(move instanceof Move.Post)).toList())
                .containsExactly(
                        new Move.PieceIn(WorkedSale.JUG, Amount.of(-545), false),
                        new Move.PieceBack(WorkedSale.JUG, ID));
        assertThat(balanced(moves)).isZero();
    }

    /** An order that never gets the piece owes its owner nothing. */
    @Test
    void nothingIsOwedForWhatWasNeverSent() {
        SaleContent order = WorkedSale.sale(true)
                .owing(Map.of(WorkedSale.JUG, new OwnerTerms(Percent.of("60"), null)))
                .withoutDelivering(List.of(WorkedSale.JUG));
        assertThat(order.owedToOwners()).isEqualTo(Amount.ZERO);
        assertThat(posts(SalePosting.moves(order))).doesNotContainKey(Account.PAYABLE);
    }

    private static Map<Account, Long> posts(List<Move> moves) {
        Map<Account, Long> sums = new TreeMap<>();
        for (Move move : moves) {
            if (move instanceof Move.Post post) {
                sums.merge(post.account(), post.amount().minor(), Long::sum);
            }
        }
        sums.values().removeIf(sum -> sum == 0);
        return sums;
    }

    /** The fixed amounts together with what reaches pieces one-sidedly. */
    private static long balanced(List<Move> moves) {
        long in = moves.stream()
                .filter(Move.PieceIn.class::isInstance)
                .mapToLong(move -> ((Move.PieceIn) move).cost().minor())
                .sum();
        return in + posts(moves).values().stream().mapToLong(Long::longValue).sum();
    }

    @Test
    void aPieceOfHerOwnOwesNobody() {
        SalePiece piece = new SalePiece(1, WorkedSale.TRAY, BigDecimal.ONE);
        assertThat(piece.owner()).isNull();
        assertThat(WorkedSale.sale(true).owing(Map.of()).owedToOwners()).isEqualTo(Amount.ZERO);
    }
}
