package patinary.insight;

import java.util.List;

/**
 * Means of small groups drawn towards the mean of all: groups that differ normally, with the moment (analysis of
 * variance) estimator for unequal groups. docs/handbook/what-to-pay.md has formula and source.
 */
final class ShrunkenMean {

    private static final int FEWEST_GROUPS = 2;

    private final Moments all;
    private final double within;
    private final double between;
    private final double meanVariance;

    private ShrunkenMean(Moments all, double within, double between, double meanVariance) {
        this.all = all;
        this.within = within;
        this.between = between;
        this.meanVariance = meanVariance;
    }

    /** Learns from all groups how far they lie apart. */
    static ShrunkenMean of(List<Moments> groups) {
        List<Moments> filled =
                groups.stream().filter(group -> group.count() > 0).toList();
        Moments all = filled.stream().reduce(Moments.NONE, Moments::plus);
        double n = all.count();
        double others = filled.size() - 1.0;
        double inside = n - filled.size();
        if (filled.size() < FEWEST_GROUPS || inside <= 0) {
            return alike(all);
        }
        double within = filled.stream().mapToDouble(Moments::scatter).sum() / inside;
        double mean = all.mean();
        double apart = filled.stream()
                .mapToDouble(g -> g.count() * (g.mean() - mean) * (g.mean() - mean))
                .sum();
        double squares =
                filled.stream().mapToDouble(g -> (double) g.count() * g.count()).sum() / n;
        double between = (apart - others * within) / (n - squares);
        return between <= 0 ? alike(all) : new ShrunkenMean(all, within, between, (within + between * squares) / n);
    }

    /** No difference between the groups, or none that can be told: everybody gets the mean of all. */
    private static ShrunkenMean alike(Moments all) {
        double variance = all.count() > 1 ? all.scatter() / (all.count() - 1) : 0;
        return new ShrunkenMean(all, variance, 0, all.count() == 0 ? 0 : variance / all.count());
    }

    /** The mean of one group; zero where no group has a figure. */
    Estimate mean(Moments group) {
        if (all.count() == 0) {
            return Estimate.normal(0, 0, 0);
        }
        double weight = weight(group.count());
        double own = group.count() == 0 ? all.mean() : group.mean();
        double value = weight * own + (1 - weight) * all.mean();
        double variance = between * (1 - weight) + (1 - weight) * (1 - weight) * meanVariance;
        return Estimate.normal(value, variance, weight);
    }

    /** How much of the estimate is the group's own mean. */
    double weight(long count) {
        return between <= 0 || count == 0 ? 0 : count / (count + within / between);
    }

    double within() {
        return within;
    }

    double between() {
        return between;
    }
}
