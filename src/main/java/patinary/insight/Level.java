package patinary.insight;

import java.util.Collection;
import java.util.function.Function;
import patinary.money.Amount;

/** How far the groups of one level lie apart, figure by figure, so that small ones are drawn towards all. */
record Level(ShrunkenShare share, ShrunkenMean net, ShrunkenMean supplies, ShrunkenMean minutes, ShrunkenMean bought) {

    static Level of(Collection<Pool> pools) {
        return new Level(
                ShrunkenShare.of(pools.stream().map(Pool::tries).toList()),
                mean(pools, Pool::net),
                mean(pools, Pool::supplies),
                mean(pools, Pool::minutes),
                mean(pools, Pool::bought));
    }

    private static ShrunkenMean mean(Collection<Pool> pools, Function<Pool, Moments> figure) {
        return ShrunkenMean.of(pools.stream().map(figure).toList());
    }

    /** The variance of what a piece brings, sold or not: chance and net are independent, their product's variance is exact. */
    static double variance(Estimate chance, Estimate net, Amount salvage) {
        double gain = net.value() - salvage.minor();
        return gain * gain * chance.variance()
                + chance.value() * chance.value() * net.variance()
                + chance.variance() * net.variance();
    }
}
