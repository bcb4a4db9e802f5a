package patinary.yearfolder;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import patinary.taxbasis.Reason;
import patinary.taxyear.TaxTable;

/**
 * How each line follows from the tables of the folder, so that the workbook can add it up once more by itself. The page of
 * the year adds up in its own way; that both come to the same is tested.
 *
 * @param terms by meaning
 * @param expenses the meanings that total expenses add up
 */
record Reckoning(Map<String, List<Term>> terms, Set<String> expenses) {

    private static final Set<String> INCOME = Set.of("gross_receipts", "other_income");
    private static final String COST = "cost_of_goods_sold";
    private static final String PROFIT = "profit_for_tax";
    private static final String EXPENSES = "expenses";

    static Reckoning of(TaxTable table) {
        Map<String, List<Term>> terms = new LinkedHashMap<>();
        Set<String> mapped = new TreeSet<>(table.map().values());
        mapped.forEach(meaning -> terms.put(meaning, mapped(meaning)));
        for (String always : List.of("gross_receipts", "returns", "other_income", COST)) {
            terms.putIfAbsent(always, mapped(always));
        }
        boolean costAmongExpenses =
                table.line(COST).filter(line -> line.part().equals(EXPENSES)).isPresent();
        profit(terms, costAmongExpenses);
        goods(terms);
        terms.put("other_expenses_total", List.of(plus("other_expenses")));
        terms.putIfAbsent("other_expenses", List.of());
        terms.put("miles_business", List.of(new Term.Rows(false, MoneyTables.TRIPS, "miles", Map.of())));
        return new Reckoning(
                terms,
                mapped.stream()
                        .filter(meaning -> table.line(meaning)
                                .filter(line -> line.part().equals(EXPENSES))
                                .isPresent())
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    /** In words, for people: what a line is made of. Empty where these books say nothing about it. */
    Optional<String> words(String meaning) {
        return Optional.ofNullable(terms.get(meaning))
                .map(all -> all.stream()
                        .map(term -> (term.minus() ? "less " : "plus ") + term.words())
                        .collect(Collectors.joining(", "))
                        .replaceFirst("^plus ", ""));
    }

    /** Income rows are positive; a line that is no income takes them off. */
    private static List<Term> mapped(String meaning) {
        boolean income = INCOME.contains(meaning);
        Map<String, String> where = Map.of("meaning", meaning);
        return List.of(
                new Term.Rows(!income, ProfitTables.INCOME, "amount", where),
                new Term.Rows(income, ProfitTables.EXPENSES, "amount", where),
                new Term.Rows(income, ProfitTables.PURCHASES, "amount", where),
                new Term.Rows(!income, LineTables.ADJUSTMENTS, PROFIT, where));
    }

    private static void profit(Map<String, List<Term>> terms, boolean costAmongExpenses) {
        terms.put("net_receipts", List.of(plus("gross_receipts"), less("returns")));
        terms.put("gross_profit", List.of(plus("net_receipts"), less(COST)));
        terms.put("gross_income", List.of(plus("gross_profit"), plus("other_income")));
        terms.put("total_expenses", List.of(new Term.AllExpenses(false)));
        List<Term> profit = new ArrayList<>(List.of(plus("gross_income"), less("total_expenses")));
        if (costAmongExpenses) {
            profit.add(plus(COST));
        }
        terms.put("tentative_profit", profit);
        Term.Rows byArea = new Term.Rows(false, HomeTable.NAME, HomeTable.BY_AREA, Map.of());
        terms.put(HomeTable.LINE, List.of(new Term.AtMost(false, byArea, "tentative_profit")));
        terms.put("net_profit", List.of(plus("tentative_profit"), less(HomeTable.LINE)));
    }

    private static void goods(Map<String, List<Term>> terms) {
        terms.put("cogs_opening", stock(StockTables.AT_START, "end_of_year_before", what(false, "OPENING")));
        terms.put("cogs_purchases", List.of(what(false, "GOODS"), what(true, "OWN_USE"), owed(Reason.OWNERS_SHARE)));
        terms.put(
                "cogs_materials",
                List.of(what(false, "MATERIALS"), what(true, "PACKED"), owed(Reason.UNPAID_SUPPLIES)));
        terms.put("cogs_available", List.of(plus("cogs_opening"), plus("cogs_purchases"), plus("cogs_materials")));
        terms.put("cogs_closing", stock(StockTables.AT_END, "end_of_year"));
        terms.put("cogs_total", List.of(plus("cogs_available"), less("cogs_closing")));
    }

    private static Term plus(String meaning) {
        return new Term.Meaning(false, meaning);
    }

    private static Term less(String meaning) {
        return new Term.Meaning(true, meaning);
    }

    /** Stock by the books, with what tax has otherwise of it on that day. */
    private static List<Term> stock(String table, String otherwise, Term... more) {
        List<Term> terms = new ArrayList<>(List.of(new Term.Rows(false, table, "cost", Map.of())));
        terms.addAll(List.of(more));
        Stream.of(Reason.values())
                .filter(Reason::isStock)
                .forEach(reason -> terms.add(adjusted(false, otherwise, reason)));
        return terms;
    }

    private static Term owed(Reason reason) {
        return adjusted(true, PROFIT, reason);
    }

    private static Term adjusted(boolean minus, String column, Reason reason) {
        return new Term.Rows(minus, LineTables.ADJUSTMENTS, column, Map.of("reason", reason.name()));
    }

    private static Term what(boolean minus, String what) {
        return new Term.Rows(minus, ProfitTables.PURCHASES, "amount", Map.of("what", what));
    }
}
