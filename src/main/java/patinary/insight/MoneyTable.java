package patinary.insight;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import patinary.insight.MoneyFacts.PieceSale;

/**
 * The money of each group and of the whole shop beside it; the whole is reckoned without looking at groups.
 *
 * @param rows by profit, the highest first, and then by name
 */
record MoneyTable(List<MoneyRow> rows, MoneyRow whole) {

    /**
     * Which groups a sale and a piece in stock belong to.
     *
     * @param ofPiece null where stock belongs to no group
     */
    record Grouping(
            Function<PieceSale, ? extends Collection<String>> ofSale,
            @Nullable Function<UUID, ? extends Collection<String>> ofPiece) {

        static Grouping ofPieces(Function<UUID, ? extends Collection<String>> groups) {
            return new Grouping(sale -> groups.apply(sale.piece()), groups);
        }

        static Grouping ofSales(Function<PieceSale, String> group) {
            return new Grouping(sale -> List.of(group.apply(sale)), null);
        }
    }

    /** The row of that number, or the whole where there is no such row. */
    MoneyRow row(@Nullable Integer number) {
        return number == null || number < 0 || number >= rows.size() ? whole : rows.get(number);
    }

    static MoneyTable of(MoneyFacts facts, Grouping grouping, int days) {
        Map<String, List<PieceSale>> sales = new HashMap<>();
        facts.sales().forEach(sale -> grouping.ofSale().apply(sale).forEach(name -> add(sales, name, sale)));
        Map<String, List<StockOfPiece>> stock = new HashMap<>();
        Function<UUID, ? extends Collection<String>> ofPiece = grouping.ofPiece();
        if (ofPiece != null) {
            facts.stock().forEach(one -> ofPiece.apply(one.piece()).forEach(name -> add(stock, name, one)));
        }
        TreeSet<String> names = new TreeSet<>(sales.keySet());
        names.addAll(stock.keySet());
        List<MoneyRow> rows = names.stream()
                .map(name -> MoneyRow.of(
                        name,
                        sales.getOrDefault(name, List.of()),
                        ofPiece == null ? null : stock.getOrDefault(name, List.of()),
                        facts,
                        days))
                .sorted(Comparator.comparing(MoneyRow::profit).reversed().thenComparing(MoneyRow::name))
                .toList();
        return new MoneyTable(rows, MoneyRow.of("", facts.sales(), facts.stock(), facts, days));
    }

    private static <T> void add(Map<String, List<T>> groups, String name, T member) {
        groups.computeIfAbsent(name, n -> new ArrayList<>()).add(member);
    }
}
