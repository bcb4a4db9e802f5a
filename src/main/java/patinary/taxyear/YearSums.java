package patinary.taxyear;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import patinary.homeuse.HomeUse;
import patinary.money.Amount;
import patinary.money.WholeUnits;

/**
 * A year sorted onto the lines of a tax table. What is mapped is added up; what a form reckons out of its own lines is
 * reckoned here; nothing that is unmapped is dropped.
 *
 * @param amounts by meaning
 * @param unmapped amounts of the profit and loss accounts that are on no line
 * @param profit what all the sums come to, whatever the lines say
 */
record YearSums(Map<String, Amount> amounts, List<AccountSum> unmapped, Amount profit) {

    private static final Set<String> INCOME = Set.of("gross_receipts", "other_income");
    private static final String HOME = "business_use_of_home";

    static YearSums of(TaxTable table, List<AccountSum> sums, CostOfGoods goods) {
        return of(table, sums, goods, null);
    }

    static YearSums of(TaxTable table, List<AccountSum> sums, CostOfGoods goods, @Nullable HomeUse home) {
        Map<String, Amount> amounts = reckoned(table, mapped(table, sums), goods, home, UnaryOperator.identity());
        List<AccountSum> unmapped = sums.stream()
                .filter(sum -> table.meaning(sum.account(), sum.category())
                        .flatMap(table::line)
                        .isEmpty())
                .filter(sum -> sum.amountMinor() != 0)
                .toList();
        Amount profit = sums.stream()
                .map(sum -> Amount.of(sum.amountMinor()))
                .collect(Amount.sum())
                .negated();
        return new YearSums(Map.copyOf(amounts), unmapped, profit);
    }

    /**
     * The lines in whole units: each line that is entered is rounded once, from its own minor units, and what the form reckons is
     * reckoned from the entered lines, so that the printed page adds up.
     *
     * @param digits how many digits of the currency are minor units
     */
    static Map<String, Amount> whole(
            TaxTable table, List<AccountSum> sums, CostOfGoods goods, @Nullable HomeUse home, int digits) {
        UnaryOperator<Amount> round = amount -> WholeUnits.round(amount, digits);
        Map<String, Amount> mapped = mapped(table, sums);
        mapped.replaceAll((meaning, amount) -> round.apply(amount));
        CostOfGoods entered = new CostOfGoods(
                round.apply(goods.opening()),
                round.apply(goods.purchasesLessOwnUse()),
                Amount.ZERO,
                round.apply(goods.materialsLessPacked()),
                Amount.ZERO,
                round.apply(goods.closing()));
        if (table.line("cogs_total").isPresent()) {
            mapped.put("cost_of_goods_sold", entered.cost());
        }
        return Map.copyOf(reckoned(table, mapped, entered, home, round));
    }

    private static Map<String, Amount> mapped(TaxTable table, List<AccountSum> sums) {
        Map<String, Amount> mapped = new HashMap<>();
        for (AccountSum sum : sums) {
            table.meaning(sum.account(), sum.category())
                    .ifPresent(meaning -> mapped.merge(meaning, signed(meaning, sum), Amount::plus));
        }
        return mapped;
    }

    /** The amount on a line, or empty where these books say nothing about it. */
    Optional<Amount> amount(String meaning) {
        return Optional.ofNullable(amounts.get(meaning));
    }

    private static Amount signed(String meaning, AccountSum sum) {
        Amount amount = Amount.of(sum.amountMinor());
        return INCOME.contains(meaning) ? amount.negated() : amount;
    }

    private static Map<String, Amount> reckoned(
            TaxTable table,
            Map<String, Amount> mapped,
            CostOfGoods goods,
            @Nullable HomeUse home,
            UnaryOperator<Amount> rounding) {
        Map<String, Amount> all = new HashMap<>(mapped);
        Amount receipts = of(mapped, "gross_receipts").minus(of(mapped, "returns"));
        Amount gross = receipts.minus(of(mapped, "cost_of_goods_sold"));
        Amount income = gross.plus(of(mapped, "other_income"));
        all.put("gross_receipts", of(mapped, "gross_receipts"));
        all.put("returns", of(mapped, "returns"));
        all.put("other_income", of(mapped, "other_income"));
        all.put("cost_of_goods_sold", of(mapped, "cost_of_goods_sold"));
        all.put("net_receipts", receipts);
        all.put("gross_profit", gross);
        all.put("gross_income", income);
        Amount expenses = expenses(table, mapped);
        Amount costInExpenses = table.line("cost_of_goods_sold")
                .filter(line -> line.part().equals("expenses"))
                .map(line -> of(mapped, "cost_of_goods_sold"))
                .orElse(Amount.ZERO);
        all.put("total_expenses", expenses);
        Amount tentative = income.minus(expenses).plus(costInExpenses);
        all.put("tentative_profit", tentative);
        all.put("net_profit", tentative);
        if (home != null && table.line(HOME).isPresent()) {
            Amount deduction = rounding.apply(home.deduction(tentative));
            all.put(HOME, deduction);
            all.put("net_profit", tentative.minus(deduction));
        }
        all.put("other_expenses_total", of(mapped, "other_expenses"));
        stock(all, goods);
        return all;
    }

    private static void stock(Map<String, Amount> all, CostOfGoods goods) {
        all.put("cogs_opening", goods.opening());
        all.put("cogs_purchases", goods.purchasesLessOwnUse());
        all.put("cogs_materials", goods.materialsLessPacked());
        all.put("cogs_available", goods.available());
        all.put("cogs_closing", goods.closing());
        all.put("cogs_total", goods.cost());
    }

    private static Amount expenses(TaxTable table, Map<String, Amount> mapped) {
        return mapped.entrySet().stream()
                .filter(entry -> table.line(entry.getKey())
                        .filter(line -> line.part().equals("expenses"))
                        .isPresent())
                .map(Map.Entry::getValue)
                .collect(Amount.sum());
    }

    private static Amount of(Map<String, Amount> amounts, String meaning) {
        return amounts.getOrDefault(meaning, Amount.ZERO);
    }
}
