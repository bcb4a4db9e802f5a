package patinary.insight;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import patinary.insight.MoneyFacts.PieceSale;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * The profit of sold pieces shared over the supply lines on them by what each line's supplies cost, so that the rows add up to
 * the profit of all to the cent. What no supply touched stands in a row of its own; so does what was touched only by supplies
 * of which no cost is known.
 */
record LineShares(List<Row> rows, Amount total) {

    /** What a share belongs to. */
    enum Part {
        LINE,
        NO_SUPPLY,
        NOT_ALLOTTED
    }

    /**
     * @param name the supply line; empty for the other parts
     * @param pieces sales of a piece that give a share to it
     */
    record Row(Part part, String name, int pieces, Amount supplies, Amount profit) {

        Row plus(Row other) {
            return new Row(part, name, pieces + other.pieces, supplies.plus(other.supplies), profit.plus(other.profit));
        }
    }

    private record Key(Part part, String name) {}

    /**
     * @param costs of each piece, the cost of supplies by the name of their line
     * @param touched pieces on which any supply was used
     */
    static LineShares of(Collection<PieceSale> sales, Map<UUID, Map<String, Amount>> costs, Set<UUID> touched) {
        Map<Key, Row> rows = new HashMap<>();
        for (PieceSale sale : sales) {
            for (Row row : shares(sale, costs.getOrDefault(sale.piece(), Map.of()), touched)) {
                rows.merge(new Key(row.part(), row.name()), row, Row::plus);
            }
        }
        List<Row> sorted = rows.values().stream()
                .sorted(Comparator.comparing(Row::part)
                        .thenComparing(Comparator.comparing(Row::profit).reversed())
                        .thenComparing(Row::name))
                .toList();
        return new LineShares(
                sorted, sales.stream().map(sale -> sale.parts().profit()).collect(Amount.sum()));
    }

    private static List<Row> shares(PieceSale sale, Map<String, Amount> costs, Set<UUID> touched) {
        Amount profit = sale.parts().profit();
        List<String> lines = costs.entrySet().stream()
                .filter(cost -> cost.getValue().isPositive())
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        if (lines.isEmpty()) {
            boolean none = costs.isEmpty() && !touched.contains(sale.piece());
            return List.of(new Row(none ? Part.NO_SUPPLY : Part.NOT_ALLOTTED, "", 1, Amount.ZERO, profit));
        }
        List<Amount> weights = lines.stream().map(costs::get).toList();
        List<Amount> parts = Shares.byAmount(profit, weights);
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            rows.add(new Row(Part.LINE, lines.get(i), 1, weights.get(i), parts.get(i)));
        }
        return rows;
    }
}
