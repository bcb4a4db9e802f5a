package patinary.taxyear;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.taxbasis.Adjustments;

/**
 * A year as its page shows it.
 *
 * @param table the tax table used
 * @param wanted the shop's table, which may have no lines for this year
 * @param parts the parts of the form in its order
 * @param unmapped what is on no line
 * @param profit the year's profit as it is counted for tax
 * @param goods cost of goods by stock and purchases
 * @param costByLedger cost of goods by the accounts; the same, or something is wrong
 * @param adjustments what tax counts otherwise than the books
 */
public record YearPage(
        String table,
        String wanted,
        List<Part> parts,
        List<AccountSum> unmapped,
        Amount profit,
        CostOfGoods goods,
        Amount costByLedger,
        Adjustments adjustments) {

    private static final Set<String> WITHOUT_ROWS = Set.of(
            "net_receipts",
            "gross_profit",
            "gross_income",
            "total_expenses",
            "tentative_profit",
            "business_use_of_home",
            "net_profit",
            "cogs_available",
            "cogs_total",
            "cogs_opening",
            "cogs_closing");

    /** One part of the form. */
    public record Part(String name, List<Line> lines) {

        /** The name of the part in the message files. */
        public String key() {
            return "taxyear.part." + name.replace(' ', '-');
        }

        /** The lines about which these books say something. */
        public List<Line> told() {
            return lines.stream().filter(Line::isTold).toList();
        }

        /** The lines about which these books say nothing. */
        public List<Line> silent() {
            return lines.stream().filter(line -> !line.isTold()).toList();
        }
    }

    /** One line of the form; without an amount where these books say nothing about it. */
    public record Line(TaxLine line, @Nullable Amount amount) {

        /** Vehicle and home are asked for elsewhere, so their lines stay in sight. */
        boolean isTold() {
            return amount != null
                    || line.part().equals("vehicle")
                    || line.meaning().equals("business_use_of_home");
        }

        /** Whether rows of its own can be opened. */
        public boolean opens() {
            return amount != null && !WITHOUT_ROWS.contains(line.meaning());
        }

        /** Whether it is the stock on the first or the last day. */
        public boolean stock() {
            return line.meaning().equals("cogs_opening") || line.meaning().equals("cogs_closing");
        }
    }

    static YearPage of(TaxTable table, String wanted, YearSums sums, CostOfGoods goods, Adjustments adjustments) {
        List<Part> parts = table.lines().stream()
                .map(TaxLine::part)
                .distinct()
                .map(part -> new Part(
                        part,
                        table.lines().stream()
                                .filter(line -> line.part().equals(part))
                                .map(line -> new Line(
                                        line, sums.amount(line.meaning()).orElse(null)))
                                .toList()))
                .toList();
        Amount cost = sums.amount("cost_of_goods_sold").orElse(Amount.ZERO);
        return new YearPage(table.name(), wanted, parts, sums.unmapped(), sums.profit(), goods, cost, adjustments);
    }

    /** The year's profit by the books. */
    public Amount bookProfit() {
        return profit.minus(adjustments.profit());
    }

    /** Whether the shop's table knows no form for this year, so that the plain one stands in. */
    public boolean standsIn() {
        return !table.equals(wanted);
    }

    /** Whether stock and purchases come to what the accounts say. */
    public boolean agrees() {
        return goods.cost().equals(costByLedger);
    }
}
