package patinary.taxbasis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Account;
import patinary.money.Amount;
import patinary.taxbasis.TaxBasis.Income;
import patinary.taxbasis.TaxBasis.Supplies;

/** From books to tax, worked by hand; everything invented. docs/handbook/tax-basis.md has the same figures. */
class AdjustmentsTest {

    private static final TaxBasis CASH = new TaxBasis(Income.CASH, Supplies.WHEN_USED);
    private static final TaxBasis BOUGHT = new TaxBasis(Income.SALE_DATE, Supplies.WHEN_BOUGHT);
    private static final TaxBasis BOTH = new TaxBasis(Income.CASH, Supplies.WHEN_BOUGHT);

    private static final Subject SALE = Subject.thing("SALE", new UUID(0, 1), "");
    private static final Subject BILL = Subject.thing("RECEIPT", new UUID(0, 2), "");
    private static final Subject PAINT = Subject.thing("SUPPLY", new UUID(0, 3), "");

    /** At the end of the first year: 66.67 unpaid, 60.00 ahead, 20.00 of credit, a bill of 40.00 + 60.00, 45.00 + 15.00 of supplies. */
    private static final List<Difference> FIRST = List.of(
            new Difference(Reason.UNPAID_SALE, "", SALE, Amount.of(-6667)),
            new Difference(Reason.PAID_AHEAD, "", Subject.buyer("Fay"), Amount.of(6000)),
            new Difference(Reason.CREDIT_GIVEN, "", Subject.buyer("Fay"), Amount.of(2000)),
            new Difference(Reason.UNPAID_EXPENSE, "office", BILL, Amount.of(4000)),
            new Difference(Reason.UNPAID_SUPPLIES, "", BILL, Amount.of(6000)),
            new Difference(Reason.BENCH, "", PAINT, Amount.of(-4500)),
            new Difference(Reason.IN_PIECES, "", Subject.thing("PIECE", new UUID(0, 4), "Box"), Amount.of(-1500)));

    /** At the end of the second: all paid and used, 15.00 of paint left and 30.00 in another piece. */
    private static final List<Difference> SECOND = List.of(
            new Difference(Reason.BENCH, "", PAINT, Amount.of(-1500)),
            new Difference(Reason.IN_PIECES, "", Subject.thing("PIECE", new UUID(0, 5), "Crate"), Amount.of(-3000)));

    @Test
    void cashCountsWhatWasReceivedAndPaid() {
        assertThat(Adjustments.of(List.of(), FIRST, CASH, CASH).profit()).isEqualTo(Amount.of(5333));
        assertThat(Adjustments.of(FIRST, SECOND, CASH, CASH).profit()).isEqualTo(Amount.of(-5333));
    }

    @Test
    void suppliesWhenBoughtCountWhatLiesThere() {
        assertThat(Adjustments.of(List.of(), FIRST, BOUGHT, BOUGHT).profit()).isEqualTo(Amount.of(-6000));
        assertThat(Adjustments.of(FIRST, SECOND, BOUGHT, BOUGHT).profit()).isEqualTo(Amount.of(1500));
    }

    /** Supplies on an unpaid bill are bought and, by cash, not yet deducted. */
    @Test
    void bothTogether() {
        assertThat(Adjustments.of(List.of(), FIRST, BOTH, BOTH).profit()).isEqualTo(Amount.of(5333));
        assertThat(Adjustments.of(FIRST, SECOND, BOTH, BOTH).profit()).isEqualTo(Amount.of(-4500 - 5333));
    }

    @Test
    void aChangeShowsItsOpeningAdjustmentApart() {
        Adjustments change = Adjustments.of(FIRST, SECOND, TaxBasis.AS_BOOKS, CASH);
        assertThat(change.opening()).isEqualTo(Amount.of(5333));
        assertThat(change.within()).isEqualTo(Amount.of(-5333));
        assertThat(change.profit()).isEqualTo(Amount.ZERO);
        Adjustments back = Adjustments.of(FIRST, SECOND, CASH, TaxBasis.AS_BOOKS);
        assertThat(back.opening()).isEqualTo(Amount.of(-5333));
        assertThat(back.within()).isEqualTo(Amount.ZERO);
    }

    @Test
    void asTheBooksNothingDiffers() {
        assertThat(Adjustments.of(FIRST, SECOND, TaxBasis.AS_BOOKS, TaxBasis.AS_BOOKS)
                        .rows())
                .isEmpty();
    }

    @Test
    void everyRowHasItsOtherSide() {
        Adjustments cash = Adjustments.of(List.of(), FIRST, CASH, CASH);
        assertThat(cash.groups())
                .extracting(Adjustments.Group::reason)
                .containsExactly(Reason.UNPAID_SALE, Reason.PAID_AHEAD, Reason.CREDIT_GIVEN, Reason.UNPAID_EXPENSE);
        Adjustment office = cash.groups().get(3).rows().get(0);
        assertThat(office.sides())
                .containsExactly(
                        new Adjustment.Side(Account.EXPENSE, "office", Amount.of(-4000)),
                        new Adjustment.Side(Account.PAYABLE, "", Amount.of(4000)));
    }

    @Test
    void aYearIsCountedAsTheLatestThatWasSet() {
        BasisByYear years = new BasisByYear(new TreeMap<>(Map.of(2025, CASH, 2027, BOUGHT)));
        assertThat(years.of(2024)).isEqualTo(TaxBasis.AS_BOOKS);
        assertThat(years.of(2026)).isEqualTo(CASH);
        assertThat(years.of(2030)).isEqualTo(BOUGHT);
        assertThat(years.before(2027, 2025)).isEqualTo(CASH);
        assertThat(years.before(2025, 2025)).as("the first day changes nothing").isEqualTo(CASH);
        assertThat(years.with(2024, TaxBasis.AS_BOOKS).before(2025, 2025))
                .as("unless the year before was set")
                .isEqualTo(TaxBasis.AS_BOOKS);
        assertThat(years.without(2027).of(2030)).isEqualTo(CASH);
    }
}
