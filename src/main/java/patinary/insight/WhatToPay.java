package patinary.insight;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.Aims;
import patinary.survival.Normal;

/**
 * The most to pay at the shelf for every kind of piece: docs/handbook/what-to-pay.md. The whole shop stands first, then
 * kinds, styles, and kinds in a style; each level learns from its own groups how far they lie apart.
 */
final class WhatToPay {

    /** Below this many sold pieces a figure is called one from few; in the whole shop there is none. A judgement. */
    static final int FEW = 5;

    private static final double MOSTLY = 0.5;

    private final Aims aims;
    private final Amount hourlyRate;
    private final Pool whole;

    private WhatToPay(Aims aims, Amount hourlyRate, Pool whole) {
        this.aims = aims;
        this.hourlyRate = hourlyRate;
        this.whole = whole;
    }

    /** @param cells every piece in exactly one cell of kind and style, either of which may be none */
    static List<PayRow> rows(Map<PayRow.Group, Pool> cells, Aims aims, Amount hourlyRate) {
        Pool whole = cells.values().stream().reduce(Pool.NONE, Pool::plus);
        WhatToPay sum = new WhatToPay(aims, hourlyRate, whole);
        List<PayRow> rows = new ArrayList<>(sum.level(Map.of(PayRow.Group.WHOLE, whole), group -> true));
        rows.addAll(sum.level(merged(cells, PayRow.Group::kindOnly), group -> group.kindId() != null));
        rows.addAll(sum.level(merged(cells, PayRow.Group::styleOnly), group -> group.styleId() != null));
        rows.addAll(sum.level(cells, group -> group.kindId() != null && group.styleId() != null));
        return List.copyOf(rows);
    }

    private static Map<PayRow.Group, Pool> merged(
            Map<PayRow.Group, Pool> cells, Function<PayRow.Group, PayRow.Group> by) {
        Map<PayRow.Group, Pool> merged = new LinkedHashMap<>();
        cells.forEach((group, pool) -> merged.merge(by.apply(group), pool, Pool::plus));
        return merged;
    }

    private List<PayRow> level(Map<PayRow.Group, Pool> groups, java.util.function.Predicate<PayRow.Group> shown) {
        Level level = enough() ? Level.of(groups.values()) : null;
        return groups.entrySet().stream()
                .filter(entry -> shown.test(entry.getKey()))
                .map(entry -> level == null
                        ? new PayRow(entry.getKey(), entry.getValue(), null, null, null, null, PayRow.Words.NONE)
                        : row(entry.getKey(), entry.getValue(), level))
                .sorted(Comparator.comparing((PayRow row) -> row.group().kind())
                        .thenComparing(row -> row.group().style()))
                .toList();
    }

    private boolean enough() {
        return whole.net().count() >= FEW && whole.tries().pieces() >= FEW;
    }

    private PayRow row(PayRow.Group group, Pool pool, Level level) {
        Estimate chance = group.isWhole()
                ? ShrunkenShare.whole(pool.tries(), 1)
                : level.share().share(pool.tries());
        Estimate net = level.net().mean(pool.net());
        Budget.Usual usual = new Budget.Usual(
                new Percent(rounded(chance.value() * 100, 2)),
                amount(net.value()),
                amount(level.supplies().mean(pool.supplies()).value()),
                rounded(level.minutes().mean(pool.minutes()).value(), 0).longValueExact());
        Budget budget = Budget.of(usual, hourlyRate, aims);
        Amount half = half(chance, net);
        double own = group.isWhole() ? 1 : (chance.ownWeight() + net.ownWeight()) / 2;
        Amount off = amount(drawn(pool.off(), whole.off(), net.ownWeight()));
        return new PayRow(
                group,
                pool,
                budget,
                off,
                price(budget.spend().minus(half)),
                price(budget.spend().plus(half)),
                words(pool, budget, own));
    }

    /** A mean drawn as far towards the whole shop's as another of the same sales, so that the two can be added. */
    private static double drawn(Moments group, Moments whole, double ownWeight) {
        double own = group.count() == 0 ? whole.mean() : group.mean();
        return ownWeight * own + (1 - ownWeight) * whole.mean();
    }

    /** Half the interval of what may be spent: chance and net are independent, their product's variance is exact. */
    private Amount half(Estimate chance, Estimate net) {
        double variance = Level.variance(chance, net, aims.salvage());
        Percent wished = aims.targetReturn();
        double share = wished == null ? 1 : 1 + wished.value().doubleValue() / 100;
        return amount(Normal.Z * Math.sqrt(variance) / share);
    }

    private Amount price(Amount spend) {
        return Budget.price(spend, aims).max(Amount.ZERO);
    }

    private static PayRow.Words words(Pool pool, Budget budget, double own) {
        if (budget.most().isNegative()) {
            return PayRow.Words.NOT_WORTH;
        }
        if (pool.net().count() >= FEW) {
            return PayRow.Words.FIRM;
        }
        return own < MOSTLY ? PayRow.Words.MOSTLY_SHOP : PayRow.Words.FEW;
    }

    private static Amount amount(double minor) {
        return Amount.of(rounded(minor, 0).longValueExact());
    }

    private static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}
