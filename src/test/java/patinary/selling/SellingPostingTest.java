package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.StockPlace;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;

/** The posting rules of selling, as the tables of docs/handbook/posting-rules-selling.md have them. */
class SellingPostingTest {

    private static final UUID ID = new UUID(7, 7);

    @Test
    void aSaleWhoseTaxTheChannelPassesOn() {
        assertThat(posts(SalePosting.moves(WorkedSale.sale(true))))
                .containsOnly(
                        entry(Account.SALES, -5000L),
                        entry(Account.SHIPPING_CHARGED, -600L),
                        entry(Account.FEES, 590L),
                        entry(Account.MONEY, 5600L - 590));
    }

    @Test
    void aSaleWhoseTaxTheShopOwes() {
        assertThat(posts(SalePosting.moves(WorkedSale.sale(false))))
                .containsOnly(
                        entry(Account.SALES, -5000L),
                        entry(Account.SHIPPING_CHARGED, -600L),
                        entry(Account.SALES_TAX_DUE, -400L),
                        entry(Account.FEES, 590L),
                        entry(Account.MONEY, 6000L - 590));
    }

    @Test
    void aTipIsDueAndIncomeOfItsOwn() {
        SaleContent unpaid = WorkedSale.sale(true).with(new SaleExtras("", Amount.of(200)));
        SaleContent tipped = unpaid.paidBy(
                List.of(new Tender(1, Way.PLACE, WorkedSale.PLACE, unpaid.sums().due())));
        assertThat(tipped.sums().due()).isEqualTo(Amount.of(5800));
        assertThat(tipped.sums().parts())
                .as("it is shared over nothing")
                .isEqualTo(WorkedSale.sale(true).sums().parts());
        assertThat(posts(SalePosting.moves(tipped))).containsEntry(Account.OTHER_INCOME, -200L);
    }

    @Test
    void aSaleTakesOutEveryPieceAndTheRetailQuantity() {
        assertThat(SalePosting.moves(WorkedSale.sale(true)))
                .contains(
                        new Move.PieceOut(WorkedSale.TRAY, Account.COST_OF_PIECES),
                        new Move.PieceOut(WorkedSale.JUG, Account.COST_OF_PIECES))
                .filteredOn(Move.SupplyOut.class::isInstance)
                .singleElement()
                .satisfies(move -> {
                    Move.SupplyOut out = (Move.SupplyOut) move;
                    assertThat(out.place()).isEqualTo(StockPlace.SHELF);
                    assertThat(out.quantity()).isEqualByComparingTo("3");
                });
    }

    /** The jug was sold elsewhere before: all of the order's money shows as it came, and of its things the jug stays. */
    @Test
    void anOrderThatDoesNotGetAPieceTakesInAllOfItsMoney() {
        SaleContent order = WorkedSale.sale(false).withoutDelivering(List.of(WorkedSale.JUG));
        List<Move> moves = SalePosting.moves(order);
        assertThat(posts(moves)).isEqualTo(posts(SalePosting.moves(WorkedSale.sale(false))));
        assertThat(moves)
                .filteredOn(Move.PieceOut.class::isInstance)
                .containsExactly(new Move.PieceOut(WorkedSale.TRAY, Account.COST_OF_PIECES));
        assertThat(order.deliveringAll().undelivered()).isEmpty();
        assertThat(posts(SalePosting.moves(order.deliveringAll()))).isEqualTo(posts(moves));
    }

    @Test
    void aRefundOfMoney() {
        assertThat(posts(RefundPosting.moves(refund(Way.PLACE))))
                .containsOnly(
                        entry(Account.REFUNDS, 2727L + 100),
                        entry(Account.SALES_TAX_DUE, 50L),
                        entry(Account.FEES, -322L),
                        entry(Account.MONEY, 322L - 2877));
    }

    @Test
    void aRefundOffWhatIsOwedAndAsCredit() {
        assertThat(posts(RefundPosting.moves(refund(Way.OWED)))).containsEntry(Account.RECEIVABLE, -2877L);
        assertThat(posts(RefundPosting.moves(refund(Way.STORE_CREDIT))))
                .containsEntry(Account.STORE_CREDIT_GIVEN, -2877L);
    }

    @Test
    void aRefundBringsBackOnlyWhatComesBack() {
        assertThat(RefundPosting.moves(refund(Way.PLACE)))
                .filteredOn(move -> !(move instanceof Move.Post))
                .containsExactly(
                        new Move.PieceBack(WorkedSale.TRAY, ID),
                        new Move.SupplyBack(WorkedSale.BRUSHES, StockPlace.SHELF, BigDecimal.ONE, ID));
    }

    /** Worked by hand in docs/handbook/bundles.md: the jar is back on the shelf, the brush is lost and moves nothing. */
    @Test
    void aRefundOfPartsOfABundle() {
        UUID jar = new UUID(7, 1);
        UUID brush = new UUID(7, 2);
        BigDecimal content = BigDecimal.valueOf(120);
        RefundContent refund = new RefundContent(
                LocalDate.of(2026, 1, 10),
                "",
                ID,
                Way.PLACE,
                WorkedSale.PLACE,
                Amount.ZERO,
                Amount.ZERO,
                Amount.ZERO,
                null,
                List.of(
                        new RefundLine(1, null, jar, content, Amount.of(2363), true, null),
                        new RefundLine(2, null, brush, BigDecimal.ONE, Amount.of(414), false, true)));
        List<Move> moves = RefundPosting.moves(refund);
        assertThat(posts(moves)).containsOnly(entry(Account.REFUNDS, 2777L), entry(Account.MONEY, -2777L));
        assertThat(moves)
                .filteredOn(move -> !(move instanceof Move.Post))
                .containsExactly(new Move.SupplyBack(jar, StockPlace.SHELF, content, ID));
    }

    /** Two sets at 33.00: each part leaves the shelf twice, and has its share of the price. */
    @Test
    void aSaleOfBundlesIsTheSaleOfTheirParts() {
        SaleLine.OfBundle of = new SaleLine.OfBundle(new UUID(8, 1), 1, "Starter set");
        BigDecimal two = BigDecimal.valueOf(2);
        List<SaleLine> lines = List.of(
                new SaleLine(1, "Jar", two, Amount.of(2475), Amount.ZERO, new UUID(7, 1), BigDecimal.valueOf(120), of),
                new SaleLine(2, "Brush", two, Amount.of(434), Amount.ZERO, new UUID(7, 2), BigDecimal.ONE, of),
                new SaleLine(3, "Sheet", two, Amount.of(391), Amount.ZERO, new UUID(7, 3), BigDecimal.ONE, of));
        SaleContent sale = WorkedSale.of(lines);
        assertThat(SalePosting.moves(sale))
                .filteredOn(move -> move instanceof Move.Post post && post.account() == Account.SALES)
                .extracting(move -> ((Move.Post) move).amount().minor())
                .containsExactly(-4950L, -868L, -782L);
        assertThat(SalePosting.moves(sale))
                .filteredOn(Move.SupplyOut.class::isInstance)
                .extracting(move -> ((Move.SupplyOut) move).quantity().intValueExact())
                .containsExactly(240, 2, 2);
        assertThat(sale.bundles()).singleElement().satisfies(sold -> {
            assertThat(sold.title()).isEqualTo("Starter set");
            assertThat(sold.price()).isEqualTo(Amount.of(3300));
            assertThat(sold.net()).isEqualTo(Amount.of(6600));
        });
    }

    @Test
    void moneyFromABuyer() {
        LocalDate day = WorkedSale.DAY;
        assertThat(posts(new BuyerPayment(ID, day, "", null, "Kit", WorkedSale.PLACE, Amount.of(1000)).moves()))
                .containsOnly(entry(Account.MONEY, 1000L), entry(Account.CUSTOMER_DEPOSITS, -1000L));
        assertThat(posts(new BuyerPayment(ID, day, "", new UUID(1, 1), "Kit", WorkedSale.PLACE, Amount.of(1000))
                        .moves()))
                .containsOnly(entry(Account.MONEY, 1000L), entry(Account.RECEIVABLE, -1000L));
    }

    @Test
    void postageAndPayout() {
        LocalDate day = WorkedSale.DAY;
        assertThat(posts(
                        new Postage(ID, day, "", null, WorkedSale.PLACE, Amount.of(540), Amount.of(60), false).moves()))
                .containsOnly(entry(Account.POSTAGE, 600L), entry(Account.MONEY, -600L));
        Payout payout = new Payout(ID, day, "", WorkedSale.PLACE, new UUID(1, 2), Amount.of(3500), Amount.of(70));
        assertThat(posts(payout.moves())).containsOnly(entry(Account.MONEY, -70L), entry(Account.FEES, 70L));
    }

    /** The tray is paid back in full and comes back, the jug's buyer keeps it and gets nothing, one brush comes back. */
    private static RefundContent refund(Way way) {
        return new RefundContent(
                LocalDate.of(2025, 3, 20),
                "",
                ID,
                way,
                way == Way.PLACE ? WorkedSale.PLACE : null,
                Amount.of(100),
                Amount.of(50),
                Amount.of(322),
                WorkedSale.PLACE,
                List.of(
                        new RefundLine(1, WorkedSale.TRAY, null, null, Amount.of(2727), true),
                        new RefundLine(2, WorkedSale.JUG, null, null, Amount.ZERO, false),
                        new RefundLine(3, null, WorkedSale.BRUSHES, BigDecimal.ONE, Amount.ZERO, true)));
    }

    /** Sums by account, without those at zero; the whole must add to zero. */
    private static Map<Account, Long> posts(List<Move> moves) {
        Map<Account, Long> sums = new TreeMap<>();
        for (Move move : moves) {
            if (move instanceof Move.Post post) {
                sums.merge(post.account(), post.amount().minor(), Long::sum);
            }
        }
        assertThat(sums.values().stream().mapToLong(Long::longValue).sum()).isZero();
        sums.values().removeIf(sum -> sum == 0);
        return sums;
    }
}
