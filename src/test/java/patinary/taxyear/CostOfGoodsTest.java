package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** Checked against published figures. */
class CostOfGoodsTest {

    /** IRS Publication 334 for 2016 returns, chapter 7, illustration; the closing figure of it was derived. */
    @Test
    void thePublishedMerchant() {
        CostOfGoods goods = new CostOfGoods(
                dollars(37_845), dollars(285_900), dollars(2_650), Amount.ZERO, Amount.ZERO, dollars(32_955));
        assertThat(goods.purchasesLessOwnUse()).isEqualTo(dollars(283_250));
        assertThat(goods.available()).isEqualTo(dollars(321_095));
        assertThat(goods.cost()).isEqualTo(dollars(288_140));
    }

    /** A textbook exercise on a small reseller with a withdrawal; its results were derived here. */
    @Test
    void theResellerWhoWithdraws() {
        CostOfGoods goods = new CostOfGoods(
                dollars(67_000), dollars(610_000), dollars(1_780), Amount.ZERO, Amount.ZERO, dollars(77_200));
        assertThat(goods.purchasesLessOwnUse()).isEqualTo(dollars(608_220));
        assertThat(goods.available()).isEqualTo(dollars(675_220));
        assertThat(goods.cost()).isEqualTo(dollars(598_020));
    }

    @Test
    void materialsArePartOfIt() {
        CostOfGoods goods = new CostOfGoods(dollars(10), dollars(20), dollars(1), dollars(5), Amount.ZERO, dollars(12));
        assertThat(goods.cost()).isEqualTo(dollars(22));
    }

    /** Ten boxes came in for 5, of which six packed sales for 3: 10 + 20 - 1 + (5 - 3) - 12 = 19; the 3 are an expense. */
    @Test
    void whatSalesWerePackedInIsNoPartOfIt() {
        CostOfGoods goods = new CostOfGoods(dollars(10), dollars(20), dollars(1), dollars(5), dollars(3), dollars(12));
        assertThat(goods.materialsLessPacked()).isEqualTo(dollars(2));
        assertThat(goods.cost()).isEqualTo(dollars(19));
    }

    private static Amount dollars(long dollars) {
        return Amount.of(dollars * 100);
    }
}
