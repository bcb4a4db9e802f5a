package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import patinary.money.Amount;

/**
 * What was put into the pieces that sold, before the work and by it, and what came back: docs/handbook/money-by-group.md. Made of the
 * rows of the table of money, so that cost and profit are those that stand there.
 *
 * @param rows in the order of the table, those in which something sold
 * @param whole all of them; without bars, since groups may overlap and it would dwarf them
 */
record BeforeAfter(List<Row> rows, Row whole) {

    /**
     * One group.
     *
     * @param at its number in the table of money; -1 for the whole
     * @param work what supplies put on at the bench
     * @param cost landed cost, after the work
     * @param back net sales less fees, postage and packaging
     */
    record Row(int at, String name, Amount work, Amount cost, Amount back, Pair pair) {

        /** What was paid before the work. */
        public Amount paid() {
            return cost.minus(work);
        }

        public Amount profit() {
            return back.minus(cost);
        }
    }

    /** Three bars on one scale: what was paid, what the work put on after it, and below them what came back. */
    record Pair(Bar paid, Bar work, Bar back) {}

    /**
     * What supplies put on, as a part of the cost that a sale took out of stock. All that they put on, where the whole landed cost of the
     * piece went; else the same part of it, half up.
     */
    static Amount work(Amount cost, Amount supplies, Amount landed) {
        if (cost.equals(landed)) {
            return supplies;
        }
        return landed.isZero()
                ? Amount.ZERO
                : cost.part(
                        BigDecimal.valueOf(supplies.minor()), BigDecimal.valueOf(landed.minor()), RoundingMode.HALF_UP);
    }

    static BeforeAfter of(MoneyTable table) {
        List<Amount> ends = new ArrayList<>();
        table.rows()
                .forEach(row -> ends.addAll(List.of(
                        row.parts().cost().minus(row.work()), row.parts().cost(), row.back())));
        Bar.Scale scale = Bar.Scale.of(ends);
        List<Row> rows = new ArrayList<>();
        for (int at = 0; at < table.rows().size(); at++) {
            if (!table.rows().get(at).sales().isEmpty()) {
                rows.add(row(at, table.rows().get(at), scale));
            }
        }
        return new BeforeAfter(List.copyOf(rows), row(-1, table.whole(), scale));
    }

    private static Row row(int at, MoneyRow row, Bar.Scale scale) {
        Amount cost = row.parts().cost();
        Amount paid = cost.minus(row.work());
        Pair pair = new Pair(scale.bar(Amount.ZERO, paid), scale.bar(paid, cost), scale.bar(Amount.ZERO, row.back()));
        return new Row(at, row.name(), row.work(), cost, row.back(), pair);
    }
}
