package patinary.insight;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import patinary.insight.MoneyFacts.PieceSale;
import patinary.money.Amount;

/** The pictures beside a group's money, each a table whose rows carry a bar. */
final class MoneyPictures {

    /** Days since found at which a new row of the age of the stock begins. */
    private static final List<Integer> AGES = List.of(0, 31, 91, 181, 366);

    /** @param key which step of price to profit */
    record Step(String key, Amount amount, Bar bar) {}

    /** @param bar of the net sales; @param pieces that sold and did not come back */
    record Month(YearMonth month, int pieces, Amount net, Amount profit, Bar bar) {

        /** Its first day, for the page. */
        public LocalDate first() {
            return month.atDay(1);
        }
    }

    /** @param from the fewest days since found; @param pieces in which money lies */
    record Age(int from, int pieces, Amount tied, Bar bar) {}

    private MoneyPictures() {}

    /** From price to profit, each step beginning where the last one ended. */
    static List<Step> fall(SaleParts parts) {
        Map<String, Amount> changes = new LinkedHashMap<>();
        changes.put("price", parts.price());
        changes.put("shipping", parts.shipping());
        changes.put("refunds", parts.refunds().negated());
        changes.put("fees", parts.fees().negated());
        changes.put("postage", parts.postage().negated());
        changes.put("packaging", parts.packaging().negated());
        changes.put("cost", parts.cost().negated());
        List<Amount> ends = new ArrayList<>(List.of(Amount.ZERO));
        changes.values().forEach(change -> ends.add(ends.get(ends.size() - 1).plus(change)));
        Bar.Scale scale = Bar.Scale.of(ends);
        List<Step> steps = new ArrayList<>();
        changes.forEach((key, change) ->
                steps.add(new Step(key, change, scale.bar(ends.get(steps.size()), ends.get(steps.size() + 1)))));
        Amount profit = parts.profit();
        steps.add(new Step("profit", profit, scale.bar(Amount.ZERO, profit)));
        return List.copyOf(steps);
    }

    /** Every month from the first day to the last, also one without a sale. */
    static List<Month> months(List<PieceSale> sales, LocalDate first, LocalDate last) {
        Map<YearMonth, List<PieceSale>> months = new TreeMap<>();
        for (YearMonth m = YearMonth.from(first); !m.isAfter(YearMonth.from(last)); m = m.plusMonths(1)) {
            months.put(m, new ArrayList<>());
        }
        sales.forEach(sale -> months.get(YearMonth.from(sale.day())).add(sale));
        List<Amount> sums =
                months.values().stream().map(those -> parts(those).net()).toList();
        Bar.Scale scale = Bar.Scale.of(sums);
        return months.entrySet().stream()
                .map(month -> {
                    SaleParts parts = parts(month.getValue());
                    int pieces = (int) month.getValue().stream()
                            .filter(sale -> !sale.cameBack())
                            .count();
                    Bar bar = scale.bar(Amount.ZERO, parts.net());
                    return new Month(month.getKey(), pieces, parts.net(), parts.profit(), bar);
                })
                .toList();
    }

    /** The money that lies in stock on the last day, by how long ago its piece was found; none where stock belongs to no such group. */
    static List<Age> ages(MoneyRow row) {
        List<StockOfPiece> stock = row.stock();
        if (stock == null) {
            return List.of();
        }
        List<Amount> sums = new ArrayList<>();
        List<Integer> counts = new ArrayList<>();
        for (int i = 0; i < AGES.size(); i++) {
            int from = AGES.get(i);
            int until = i + 1 < AGES.size() ? AGES.get(i + 1) : Integer.MAX_VALUE;
            List<StockOfPiece> those = stock.stream()
                    .filter(one -> !one.closing().isZero() && one.age() >= from && one.age() < until)
                    .toList();
            counts.add(those.size());
            sums.add(those.stream().map(StockOfPiece::closing).collect(Amount.sum()));
        }
        Bar.Scale scale = Bar.Scale.of(sums);
        List<Age> ages = new ArrayList<>();
        for (int i = 0; i < AGES.size(); i++) {
            ages.add(new Age(AGES.get(i), counts.get(i), sums.get(i), scale.bar(Amount.ZERO, sums.get(i))));
        }
        return List.copyOf(ages);
    }

    private static SaleParts parts(List<PieceSale> sales) {
        return sales.stream().map(PieceSale::parts).collect(SaleParts.sum());
    }
}
