package patinary.taxyear;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import patinary.homeuse.HomeRate;
import patinary.homeuse.HomeUse;
import patinary.money.Amount;
import patinary.taxbasis.Adjustments;
import patinary.taxbasis.TaxBasis;

/** A year on the lines of a form. */
class YearSumsTest {

    private static final Adjustments AS_BOOKS = new Adjustments(TaxBasis.AS_BOOKS, TaxBasis.AS_BOOKS, List.of());

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

    /**
     * In whole units: 5,000.55 + 18,500.73 are one line of 23,501 (Iowa Department of Revenue, read: only the total is
     * rounded); 129.49 and 235.50 are entered as 129 and 236 (the same), so that the printed page adds up to
     * 23,501 − 129 = 23,372 and 23,372 − 236 = 23,136, while the cents come to 23,371.79 and 23,136.29.
     */
    @Test
    void wholeUnitsAreReckonedFromTheEnteredLines() {
        List<AccountSum> sums = List.of(
                new AccountSum("SALES", "", -500_055),
                new AccountSum("SHIPPING_CHARGED", "", -1_850_073),
                new AccountSum("REFUNDS", "", 12_949),
                new AccountSum("EXPENSE", "advertising", 23_550));
        CostOfGoods none =
                new CostOfGoods(Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO);
        Map<String, Amount> whole = YearSums.whole(tables.table("us-schedule-c", 2024), sums, none, null, 2);
        assertThat(whole)
                .containsEntry("gross_receipts", dollars(23_501))
                .containsEntry("returns", dollars(129))
                .containsEntry("net_receipts", dollars(23_372))
                .containsEntry("advertising", dollars(236))
                .containsEntry("net_profit", dollars(23_136));
    }

    /** Worked by hand: 100.50 + 50.50 − 20.40 − 30.50 = 100.10 in cents; entered 101 + 51 − 31 = 121, own use within its line. */
    @Test
    void costOfGoodsInWholeUnitsIsThatOfItsOwnPart() {
        CostOfGoods goods = new CostOfGoods(
                Amount.of(10_050), Amount.of(7_090), Amount.of(2_040), Amount.ZERO, Amount.ZERO, Amount.of(3_050));
        Map<String, Amount> whole = YearSums.whole(
                tables.table("us-schedule-c", 2024),
                List.of(new AccountSum("SALES", "", -50_000), new AccountSum("COST_OF_PIECES", "", 12_050)),
                goods,
                null,
                2);
        assertThat(whole)
                .containsEntry("cogs_opening", dollars(101))
                .containsEntry("cogs_purchases", dollars(51))
                .containsEntry("cogs_closing", dollars(31))
                .containsEntry("cogs_total", dollars(121))
                .containsEntry("cost_of_goods_sold", dollars(121))
                .containsEntry("gross_profit", dollars(379));
    }

    /** The home: 140 square feet at 5 dollars are 700 (Revenue Procedure 2013-13, read), limited by a profit of 450.60. */
    @Test
    void theHomeTakesNoMoreThanTheProfit() {
        HomeUse home = new HomeUse(
                2024, BigDecimal.valueOf(140), 12, "", new HomeRate(500, BigDecimal.valueOf(300), "a source", "read"));
        CostOfGoods none =
                new CostOfGoods(Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO);
        TaxTable table = tables.table("us-schedule-c", 2024);
        YearSums rich = YearSums.of(table, List.of(sum("SALES", "", -1_000)), none, home);
        assertThat(rich.amount("business_use_of_home")).contains(dollars(700));
        assertThat(rich.amount("net_profit")).contains(dollars(300));
        assertThat(rich.amount("total_expenses")).contains(Amount.ZERO);
        List<AccountSum> little = List.of(new AccountSum("SALES", "", -45_060));
        assertThat(YearSums.of(table, little, none, home).amount("net_profit")).contains(Amount.ZERO);
        assertThat(YearSums.whole(table, little, none, home, 2))
                .containsEntry("business_use_of_home", dollars(451))
                .containsEntry("net_profit", Amount.ZERO);
        assertThat(YearSums.of(tables.table(TaxTables.PLAIN, 2024), little, none, home)
                        .amount("net_profit"))
                .as("the plain list has no such line")
                .contains(Amount.of(45_060));
    }

    /** Other expenses stood on line 27a in 2024 and stand on 27b in 2025: sources in tax-lines.csv. Amounts are invented. */
    @Test
    void theYearBeforeIsPutBesideByMeaning() {
        CostOfGoods none =
                new CostOfGoods(Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO, Amount.ZERO);
        TaxTable now = tables.table("us-schedule-c", 2025);
        TaxTable before = tables.table("us-schedule-c", 2024);
        YearSums less = YearSums.of(now, List.of(sum("SALES", "", -90)), none);
        YearSums more = YearSums.of(before, List.of(sum("SALES", "", -100), sum("EXPENSE", "education", 7)), none);
        YearBeside beside = YearBeside.of(
                YearPage.of(now, "us-schedule-c", less, none, AS_BOOKS),
                YearPage.of(before, "us-schedule-c", more, none, AS_BOOKS),
                2024);
        TaxLine other = now.line("other_expenses").orElseThrow();
        assertThat(beside.movedFrom(other)).isEqualTo("27a");
        assertThat(beside.amount(other)).isEqualTo(dollars(7));
        assertThat(beside.difference(new YearPage.Line(other, null))).isEqualTo(dollars(-7));
        TaxLine receipts = now.line("gross_receipts").orElseThrow();
        assertThat(beside.movedFrom(receipts)).isEmpty();
        assertThat(beside.difference(new YearPage.Line(receipts, dollars(90)))).isEqualTo(dollars(-10));
        assertThat(beside.gone()).isEmpty();
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
