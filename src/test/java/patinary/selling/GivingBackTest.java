package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;

/** Orders that were cancelled, as docs/handbook/posting-rules-selling.md works them by hand. */
class GivingBackTest {

    private static final UUID ORDER = new UUID(9, 9);
    private static final LocalDate DAY = LocalDate.of(2025, 3, 12);

    /** The tray at 40.00 and shipping of 6.00, the tax passed on; the channel kept 4.90 and returned 4.00. */
    @Test
    void anOrderCancelledAsAWhole() {
        SaleContent unpaid = new SaleContent(
                LocalDate.of(2025, 3, 11),
                "",
                WorkedSale.CHANNEL,
                "",
                "",
                Amount.ZERO,
                Amount.of(600),
                Amount.of(320),
                true,
                Amount.of(490),
                WorkedSale.PLACE,
                null,
                List.of(new SaleLine(1, "Tray", BigDecimal.ONE, Amount.of(4000), Amount.ZERO, null, null)),
                List.of(new SalePiece(1, WorkedSale.TRAY, BigDecimal.ONE)),
                List.of(),
                List.of());
        SaleContent order = unpaid.paidBy(List.of(
                        new Tender(1, Way.PLACE, WorkedSale.PLACE, unpaid.sums().due())))
                .withoutDelivering(List.of(WorkedSale.TRAY));
        GivingBack back = GivingBack.fresh(ORDER, order, List.of(WorkedSale.TRAY));
        RefundContent refund = back.on(DAY, "", Amount.of(400), Way.PLACE, back.usualPlace());

        assertThat(order.nothingDelivered()).isTrue();
        assertThat(refund.total()).isEqualTo(Amount.of(4600));
        assertThat(refund.placeId()).isEqualTo(WorkedSale.PLACE);
        assertThat(sum(SalePosting.moves(order), Account.SALES)).isEqualTo(-4000);
        assertThat(sum(SalePosting.moves(order), Account.SHIPPING_CHARGED)).isEqualTo(-600);
        assertThat(sum(SalePosting.moves(order), Account.FEES)).isEqualTo(490);
        assertThat(sum(SalePosting.moves(order), Account.MONEY)).isEqualTo(4110);
        assertThat(sum(RefundPosting.moves(refund), Account.REFUNDS)).isEqualTo(4600);
        assertThat(sum(RefundPosting.moves(refund), Account.FEES)).isEqualTo(-400);
        assertThat(sum(RefundPosting.moves(refund), Account.MONEY)).isEqualTo(-4200);
        assertThat(SalePosting.moves(order)).noneMatch(Move.PieceOut.class::isInstance);
        assertThat(RefundPosting.moves(refund)).allMatch(Move.Post.class::isInstance);
    }

    /** Of the worked sale the tray alone never comes: 27.27 of 50.00, so 2.18 (2.1816) of the 4.00 tax; the shipping stays. */
    @Test
    void aPartOfAnOrder() {
        SaleContent order = WorkedSale.sale(false).withoutDelivering(List.of(WorkedSale.TRAY));
        RefundContent refund = GivingBack.fresh(ORDER, order, List.of(WorkedSale.TRAY))
                .on(DAY, "", Amount.ZERO, Way.PLACE, WorkedSale.PLACE);

        assertThat(order.nothingDelivered()).isFalse();
        assertThat(refund.lines()).singleElement().satisfies(line -> {
            assertThat(line.amount()).isEqualTo(Amount.of(2727));
            assertThat(line.comesBack()).isFalse();
        });
        assertThat(refund.shipping()).isEqualTo(Amount.ZERO);
        assertThat(refund.tax()).isEqualTo(Amount.of(218));
    }

    /** Nothing goes back a second time. */
    @Test
    void whatWasGivenBackBefore() {
        SaleContent order = WorkedSale.sale(false).withoutDelivering(List.of(WorkedSale.TRAY));
        RefundContent refund = new GivingBack(
                        ORDER, order, java.util.Map.of(WorkedSale.TRAY, Amount.of(727)), Amount.ZERO, Amount.of(20))
                .on(DAY, "", Amount.ZERO, Way.OWED, WorkedSale.PLACE);
        assertThat(refund.total()).isEqualTo(Amount.of(747));
        assertThat(refund.placeId()).isNull();
    }

    private static long sum(List<Move> moves, Account account) {
        return moves.stream()
                .filter(move -> move instanceof Move.Post post && post.account() == account)
                .mapToLong(move -> ((Move.Post) move).amount().minor())
                .sum();
    }
}
