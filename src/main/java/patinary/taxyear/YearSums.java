package patinary.taxyear;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import patinary.money.Amount;

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

    static YearSums of(TaxTable table, List<AccountSum> sums, CostOfGoods goods) {
        Map<String, Amount> mapped = new HashMap<>();
        for (AccountSum sum : sums) {
            table.meaning(sum.account(), sum.category())
                    .ifPresent(meaning -> mapped.merge(meaning, signed(meaning, sum), Amount::plus));
        }
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
        return new YearSums(Map.copyOf(reckoned(table, mapped, goods)), unmapped, profit);
    }

    /** The amount on a line, or empty where these books say nothing about it. */
    Optional<Amount> amount(String meaning) {
        return Optional.ofNullable(amounts.get(meaning));
    }

    private static Amount signed(String meaning, AccountSum sum) {
        Amount amount = Amount.of(sum.amountMinor());
        return INCOME.contains(meaning) ? amount.negated() : amount;
    }

    private static Map<String, Amount> reckoned(TaxTable table, Map<String, Amount> mapped, CostOfGoods goods) {
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
        all.put("tentative_profit", income.minus(expenses).plus(costInExpenses));
        all.put("net_profit", income.minus(expenses).plus(costInExpenses));
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
