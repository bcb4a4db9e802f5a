package patinary.insight;

import java.util.List;
import org.apache.commons.statistics.distribution.BetaDistribution;

/**
 * Shares of small groups drawn towards the share of all, so that one sold of one is not the best of the shop: the
 * beta-binomial model with its moment estimator for unequal groups. docs/handbook/what-to-pay.md has formula and source.
 */
final class ShrunkenShare {

    private static final int FEWEST_GROUPS = 3;
    private static final double HALF = 0.5;
    private static final double TAIL = 0.025;

    private final Tries all;
    private final double worth;

    /** @param worth how many pieces the whole shop's share is worth beside a group's own; NaN where that cannot be told */
    private ShrunkenShare(Tries all, double worth) {
        this.all = all;
        this.worth = worth;
    }

    /** Learns from all groups how far they lie apart. Where in each either all sold or none, the shop's share says nothing. */
    static ShrunkenShare of(List<Tries> groups) {
        List<Tries> tried = groups.stream().filter(group -> group.pieces() > 0).toList();
        Tries all = tried.stream().reduce(Tries.NONE, Tries::plus);
        double n = all.pieces();
        double squares = tried.stream()
                .mapToDouble(g -> (double) g.pieces() * g.pieces())
                .sum();
        double others = tried.size() - 1.0;
        double room = n - squares / n - others;
        boolean alike = all.sold() == 0 || all.sold() == all.pieces();
        if (alike || tried.size() < FEWEST_GROUPS || room <= 0) {
            return new ShrunkenShare(all, Double.NaN);
        }
        double p = all.share();
        double scatter = tried.stream()
                .mapToDouble(g -> g.pieces() * (g.share() - p) * (g.share() - p))
                .sum();
        double rho = (scatter / (p * (1 - p)) - others) / room;
        return new ShrunkenShare(all, rho >= 1 ? Double.NaN : rho <= 0 ? Double.POSITIVE_INFINITY : (1 - rho) / rho);
    }

    /**
     * The share of one group. Where the groups show no difference, it is that of all; where a difference cannot be told
     * from so little, the group stands alone (Jeffreys' prior), and a group without a piece takes that of all.
     */
    Estimate share(Tries group) {
        if (Double.isInfinite(worth) || group.pieces() == 0 && Double.isNaN(worth)) {
            return whole(all, 0);
        }
        if (Double.isNaN(worth)) {
            return alone(group, 1);
        }
        double alpha = all.share() * worth;
        double beta = (1 - all.share()) * worth;
        return beta(
                group.sold() + alpha, group.pieces() - group.sold() + beta, group.pieces() / (group.pieces() + worth));
    }

    /** The share of all as counted, with Jeffreys' interval; there is at least one piece. */
    static Estimate whole(Tries all, double ownWeight) {
        Estimate around = alone(all, ownWeight);
        return new Estimate(all.share(), around.low(), around.high(), around.variance(), ownWeight);
    }

    /**
     * By Jeffreys' prior: as if half a piece more had sold and half a piece had not. Where none sold the lower limit is 0, where all did
     * the upper one 1 (Brown, Cai and DasGupta, Statist. Sci. 16 (2001) 101–133, the rule from memory; the reference values have it).
     */
    private static Estimate alone(Tries group, double ownWeight) {
        Estimate share = beta(group.sold() + HALF, group.pieces() - group.sold() + HALF, ownWeight);
        return new Estimate(
                share.value(),
                group.sold() == 0 ? 0 : share.low(),
                group.sold() == group.pieces() ? 1 : share.high(),
                share.variance(),
                ownWeight);
    }

    private static Estimate beta(double sold, double not, double ownWeight) {
        BetaDistribution beta = BetaDistribution.of(sold, not);
        return new Estimate(
                beta.getMean(),
                beta.inverseCumulativeProbability(TAIL),
                beta.inverseSurvivalProbability(TAIL),
                beta.getVariance(),
                ownWeight);
    }

    double worth() {
        return worth;
    }
}
