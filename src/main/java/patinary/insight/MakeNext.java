package patinary.insight;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import patinary.money.Amount;
import patinary.shop.Aims;
import patinary.survival.Normal;

/**
 * Which kind in which style to make next: docs/handbook/what-to-make-next.md. Every figure of a group is drawn towards the whole
 * shop's; a group of which few sold, or few had their full time on offer, is shown and not ranked.
 */
final class MakeNext {

    /** What the groups are ranked by. */
    enum Order {
        HOUR,
        MONEY;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<Order> of(String word) {
            return List.of(values()).stream().filter(o -> o.word().equals(word)).findFirst();
        }
    }

    private MakeNext() {}

    /** @param cells every piece in exactly one cell of kind and style, either of which may be none */
    static List<NextRow> rows(Map<PayRow.Group, Pool> cells, Aims aims, Order order) {
        Level level = Level.of(cells.values());
        Pool whole = cells.values().stream().reduce(Pool.NONE, Pool::plus);
        boolean enough = told(whole);
        return cells.entrySet().stream()
                .filter(cell -> !cell.getKey().isWhole())
                .map(cell -> row(cell.getKey(), cell.getValue(), level, aims.salvage(), enough))
                .sorted(Comparator.comparing(NextRow::told)
                        .reversed()
                        .thenComparing(Comparator.comparingDouble((NextRow row) -> rank(row, order))
                                .reversed())
                        .thenComparing(row -> row.group().kind())
                        .thenComparing(row -> row.group().style()))
                .toList();
    }

    private static boolean told(Pool pool) {
        return pool.net().count() >= WhatToPay.FEW && pool.tries().pieces() >= WhatToPay.FEW;
    }

    private static NextRow row(PayRow.Group group, Pool pool, Level level, Amount salvage, boolean enough) {
        Estimate chance = level.share().share(pool.tries());
        Estimate net = level.net().mean(pool.net());
        Estimate supplies = level.supplies().mean(pool.supplies());
        Estimate bought = level.bought().mean(pool.bought());
        double money = supplies.value() + bought.value();
        double profit = chance.value() * net.value() + (1 - chance.value()) * salvage.minor() - money;
        double half =
                Normal.Z * Math.sqrt(Level.variance(chance, net, salvage) + supplies.variance() + bought.variance());
        double minutes = level.minutes().mean(pool.minutes()).value();
        return new NextRow(
                group,
                pool,
                chance.percent(),
                net.value(),
                profit,
                half,
                minutes,
                money,
                words(enough && told(pool), profit, half));
    }

    private static NextRow.Words words(boolean told, double profit, double half) {
        if (!told) {
            return NextRow.Words.FEW;
        }
        if (profit <= 0) {
            return NextRow.Words.LOSS;
        }
        return profit > half ? NextRow.Words.WORTH : NextRow.Words.LIKELY;
    }

    /** Without minutes, or without money in it, there is no ratio; it is then ranked by the profit of a whole minute or cent. */
    private static double rank(NextRow row, Order order) {
        double per = order == Order.HOUR ? row.minutes() : row.money();
        return row.profit() / Math.max(1, per);
    }
}
