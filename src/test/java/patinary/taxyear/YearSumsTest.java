package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** A year on the lines of a form. */
class YearSumsTest {

    private final TaxTables tables = TaxTables.load();

    /** IRS Publication 334 for 2016 returns, chapter 7, illustration, lines 1 to 5; the expenses below it are invented. */
    @Test
    void thePublishedMerchant() {
        CostOfGoods goods = new CostOfGoods(
                dollars(37_845), dollars(285_900), dollars(2_650), Amount.ZERO, Amount.ZERO, dollars(32_955));
        YearSums sums = YearSums.of(
                tables.table("us-schedule-c", 2024),
                List.of(
                        sum("SALES", "", -390_000),
                        sum("SHIPPING_CHARGED", "", -10_000),
                        sum("REFUNDS", "", 14_940),
                        sum("COST_OF_PIECES", "", 288_000),
                        sum("WRITE_OFFS", "count", 140),
                        sum("OTHER_INCOME", "Lessons", -500),
                        sum("EXPENSE", "advertising", 200),
                        sum("EXPENSE", "education", 60),
                        sum("EXPENSE", "a key no table has", 7),
                        sum("FEES", "sale", 900),
                        sum("VEHICLE", "", 70)),
                goods);
        assertThat(sums.amount("gross_receipts")).contains(dollars(400_000));
        assertThat(sums.amount("returns")).contains(dollars(14_940));
        assertThat(sums.amount("net_receipts")).contains(dollars(385_060));
        assertThat(sums.amount("cost_of_goods_sold")).contains(dollars(288_140));
        assertThat(sums.amount("cogs_total")).contains(dollars(288_140));
        assertThat(sums.amount("gross_profit")).contains(dollars(96_920));
        assertThat(sums.amount("gross_income")).contains(dollars(97_420));
        assertThat(sums.amount("commissions_and_fees")).contains(dollars(900));
        assertThat(sums.amount("total_expenses")).contains(dollars(1_230));
        assertThat(sums.amount("net_profit")).contains(dollars(96_190));
        assertThat(sums.amount("insurance"))
                .as("nothing recorded, nothing shown")
                .isEmpty();
        assertThat(sums.unmapped()).containsExactly(sum("EXPENSE", "a key no table has", 7));
        assertThat(sums.profit()).as("unmapped amounts are in the profit").isEqualTo(dollars(96_183));
    }

    /** A form that takes refunds off the turnover and has cost of goods among its expenses: HMRC SA103S 2023-24. */
    @Test
    void aFormOfAnotherShape() {
        CostOfGoods goods =
                new CostOfGoods(Amount.ZERO, dollars(60), Amount.ZERO, Amount.ZERO, Amount.ZERO, dollars(20));
        YearSums sums = YearSums.of(
                tables.table("uk-self-employment-short", 2023),
                List.of(
                        sum("SALES", "", -100),
                        sum("REFUNDS", "", 10),
                        sum("COST_OF_PIECES", "", 40),
                        sum("EXPENSE", "office", 5)),
                goods);
        assertThat(sums.amount("gross_receipts")).contains(dollars(90));
        assertThat(sums.amount("total_expenses")).contains(dollars(45));
        assertThat(sums.amount("net_profit")).contains(dollars(45));
        assertThat(sums.profit()).isEqualTo(dollars(45));
    }

    /** Sources as in tax-lines.csv: line 27a up to 2024, 27b from 2025. */
    @Test
    void linesMoveFromYearToYear() {
        assertThat(tables.table("us-schedule-c", 2024).line("other_expenses"))
                .map(TaxLine::line)
                .contains("27a");
        assertThat(tables.table("us-schedule-c", 2025).line("other_expenses"))
                .map(TaxLine::line)
                .contains("27b");
        assertThat(tables.table("us-schedule-c", 2026)
                        .line("other_expenses")
                        .orElseThrow()
                        .check())
                .isTrue();
        assertThat(tables.table("us-schedule-c", 2031).lines()).isEmpty();
        assertThat(tables.table(TaxTables.PLAIN, 2031).lines()).isNotEmpty();
    }

    private static AccountSum sum(String account, String category, long dollars) {
        return new AccountSum(account, category, dollars * 100);
    }

    private static Amount dollars(long dollars) {
        return Amount.of(dollars * 100);
    }
}
