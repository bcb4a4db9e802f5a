package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
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
     * What one sale of a piece gives.
     *
     * @param supplies what those of the line on it cost
     */
    record Share(UUID piece, LocalDate sold, Amount supplies, Amount profit) {}

    /**
     * @param name the supply line; empty for the other parts
     * @param shares of each sale of a piece that gives one to it; they add up to its figures
     */
    record Row(Part part, String name, List<Share> shares) {

        public int pieces() {
            return shares.size();
        }

        public Amount supplies() {
            return shares.stream().map(Share::supplies).collect(Amount.sum());
        }

        public Amount profit() {
            return shares.stream().map(Share::profit).collect(Amount.sum());
        }
    }

    private record Key(Part part, String name) {}

    /** The row of that number, or null where there is none. */
    @Nullable
    Row row(@Nullable Integer number) {
        return number == null || number < 0 || number >= rows.size() ? null : rows.get(number);
    }

    /**
     * @param costs of each piece, the cost of supplies by the name of their line
     * @param touched pieces on which any supply was used
     */
    static LineShares of(Collection<PieceSale> sales, Map<UUID, Map<String, Amount>> costs, Set<UUID> touched) {
        Map<Key, List<Share>> rows = new HashMap<>();
        for (PieceSale sale : sales) {
            shares(sale, costs.getOrDefault(sale.piece(), Map.of()), touched)
                    .forEach((key, share) ->
                            rows.computeIfAbsent(key, k -> new ArrayList<>()).add(share));
        }
        List<Row> sorted = rows.entrySet().stream()
                .map(row -> new Row(row.getKey().part(), row.getKey().name(), row.getValue()))
                .sorted(Comparator.comparing(Row::part)
                        .thenComparing(Comparator.comparing(Row::profit).reversed())
                        .thenComparing(Row::name))
                .toList();
        return new LineShares(
                sorted, sales.stream().map(sale -> sale.parts().profit()).collect(Amount.sum()));
    }

    private static Map<Key, Share> shares(PieceSale sale, Map<String, Amount> costs, Set<UUID> touched) {
        Amount profit = sale.parts().profit();
        List<String> lines = costs.entrySet().stream()
                .filter(cost -> cost.getValue().isPositive())
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        if (lines.isEmpty()) {
            boolean none = costs.isEmpty() && !touched.contains(sale.piece());
            return Map.of(
                    new Key(none ? Part.NO_SUPPLY : Part.NOT_ALLOTTED, ""),
                    new Share(sale.piece(), sale.day(), Amount.ZERO, profit));
        }
        List<Amount> weights = lines.stream().map(costs::get).toList();
        List<Amount> parts = Shares.byAmount(profit, weights);
        Map<Key, Share> shares = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            shares.put(
                    new Key(Part.LINE, lines.get(i)),
                    new Share(sale.piece(), sale.day(), weights.get(i), parts.get(i)));
        }
        return shares;
    }
}
