package patinary.taxbasis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** What an unpaid bill and an unpaid sale are made of, worked by hand. */
class OpenBillTest {

    /** 100.00, of which 40.00 office, 30.00 paint, 30.00 a chair; 50.00 is owed: half of each. */
    @Test
    void aPartPaymentPaysEveryLineAlike() {
        OpenBill.Parts parts = new OpenBill(usd(5000), usd(10000), Map.of("office", usd(4000)), usd(3000)).parts();
        assertThat(parts.expenses()).isEqualTo(Map.of("office", usd(2000)));
        assertThat(parts.supplies()).isEqualTo(usd(1500));
    }

    /** A third of 10.00 of office and 20.00 of meals, 10.01 owed: 3.34 and 6.67 by largest remainder. */
    @Test
    void centsAreShared() {
        OpenBill.Parts parts = new OpenBill(
                        usd(1001), usd(3000), Map.of("office", usd(1000), "meals", usd(2000)), Amount.ZERO)
                .parts();
        assertThat(parts.expenses()).isEqualTo(Map.of("office", usd(334), "meals", usd(667)));
    }

    @Test
    void aBillOfGoodsAloneHasNoPartHere() {
        OpenBill.Parts parts = new OpenBill(usd(1000), usd(3000), Map.of(), Amount.ZERO).parts();
        assertThat(parts.expenses()).isEmpty();
        assertThat(parts.supplies()).isEqualTo(Amount.ZERO);
    }

    /** 72.00 of 108.00 is owed; 8.00 of the whole is sales tax: 72 × 100 / 108 = 66.666…, 66.67. */
    @Test
    void salesTaxIsNoIncome() {
        assertThat(OpenBill.withoutTax(usd(7200), usd(10000), usd(800))).isEqualTo(usd(6667));
        assertThat(OpenBill.withoutTax(usd(7200), Amount.ZERO, Amount.ZERO)).isEqualTo(usd(7200));
    }

    private static Amount usd(long cents) {
        return Amount.of(cents);
    }
}
