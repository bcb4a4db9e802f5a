package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** A year's postings added up, worked by hand. */
class YearPartsTest {

    /**
     * A chair bought for 30 and two tins for 20; half a tin (5) painted on a chair; the chair sold for 80 out of stock at 35 and packed
     * for 2 from the bench; a tin of the shelf bought for 12 and taken home.
     */
    private final YearParts year = new YearParts(List.of(
            part("PIECES", "STOCK", "GOODS", false, 3_000),
            part("PIECES", "STOCK", null, false, 500),
            part("PIECES", "STOCK", null, false, -3_500),
            part("BENCH", "STOCK", "MATERIALS", false, 2_000),
            part("BENCH", "STOCK", null, false, -700),
            part("SHELF", "STOCK", "GOODS", false, 1_200),
            part("SHELF", "STOCK", null, false, -1_200),
            part("OWN_USE", "OWN_USE", null, false, 1_200),
            part("SALES", "INCOME", null, false, -8_000),
            part("COST_OF_PIECES", "COST", null, false, 3_500),
            new YearParts.Part("EXPENSE", "packaging", "EXPENSE", null, true, 200),
            new YearParts.Part("EXPENSE", "packaging", "EXPENSE", null, false, 300),
            part("CASH", "MONEY", null, false, 1_500)));

    @Test
    void profitAndLossByCategory() {
        assertThat(year.sums())
                .as("two parts of one category together; stock, own use and money are no profit")
                .containsExactly(
                        new AccountSum("COST_OF_PIECES", "", 3_500),
                        new AccountSum("EXPENSE", "packaging", 500),
                        new AccountSum("SALES", "", -8_000));
    }

    @Test
    void costOfGoodsFromStockAndPurchases() {
        CostOfGoods goods = year.goods(Amount.of(10_000));
        assertThat(goods)
                .isEqualTo(new CostOfGoods(
                        Amount.of(10_000),
                        Amount.of(4_200),
                        Amount.of(1_200),
                        Amount.of(2_000),
                        Amount.of(200),
                        Amount.of(11_300)));
        assertThat(goods.cost()).as("what the accounts say").isEqualTo(Amount.of(3_500));
    }

    @Test
    void whatTheOpeningBroughtIsOpeningStock() {
        YearParts first = new YearParts(List.of(part("PIECES", "STOCK", "OPENING", false, 700)));
        CostOfGoods goods = first.goods(Amount.ZERO);
        assertThat(goods.opening()).isEqualTo(Amount.of(700));
        assertThat(goods.closing()).isEqualTo(Amount.of(700));
        assertThat(goods.cost()).isEqualTo(Amount.ZERO);
    }

    private static YearParts.Part part(
            String account, String part, @Nullable String purchase, boolean packed, long amount) {
        return new YearParts.Part(account, "", part, purchase, packed, amount);
    }
}
