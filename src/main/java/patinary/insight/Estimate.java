package patinary.insight;

import patinary.money.Percent;
import patinary.survival.Normal;

/**
 * A figure estimated from few pieces. Not money yet: a rate, or a mean in minor units, which is rounded where it becomes
 * an amount.
 *
 * @param value the estimate
 * @param low the lower limit of its 95 % interval
 * @param high the upper limit
 * @param variance the square of its standard error
 * @param ownWeight how much of it is the group's own figure, from 0 to 1; the rest is the whole shop's
 */
record Estimate(double value, double low, double high, double variance, double ownWeight) {

    /** A share in percent with one decimal. */
    public Percent percent() {
        return Ratios.percent(value);
    }

    public Percent lowPercent() {
        return Ratios.percent(low);
    }

    public Percent highPercent() {
        return Ratios.percent(high);
    }

    static Estimate normal(double value, double variance, double ownWeight) {
        double half = Normal.Z * Math.sqrt(variance);
        return new Estimate(value, value - half, value + half, variance, ownWeight);
    }
}
