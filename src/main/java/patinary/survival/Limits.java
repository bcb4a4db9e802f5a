package patinary.survival;

/**
 * The three usual ways to put 95 % limits around a share still unsold. Source of the formulas: Therneau, "A package for
 * survival analysis in R", section 2.1. LOG_LOG keeps its promise best in small groups (docs/handbook/days-to-sell.md).
 */
public enum Limits {
    LOG {
        @Override
        Span around(double share, double greenwood) {
            double wide = Normal.Z * Math.sqrt(greenwood);
            return new Span(share * Math.exp(-wide), Math.min(1, share * Math.exp(wide)));
        }
    },
    LOG_LOG {
        @Override
        Span around(double share, double greenwood) {
            if (share >= 1) {
                return Span.UNKNOWN;
            }
            double middle = Math.log(-Math.log(share));
            double wide = Normal.Z * Math.sqrt(greenwood) / Math.abs(Math.log(share));
            return new Span(Math.exp(-Math.exp(middle + wide)), Math.exp(-Math.exp(middle - wide)));
        }
    },
    PLAIN {
        @Override
        Span around(double share, double greenwood) {
            double wide = Normal.Z * share * Math.sqrt(greenwood);
            return new Span(Math.max(0, share - wide), Math.min(1, share + wide));
        }
    };

    /** Limits of a share between 0 and 1; a share of 0 has none. */
    Span of(double share, double greenwood) {
        return share <= 0 ? Span.UNKNOWN : around(share, greenwood);
    }

    abstract Span around(double share, double greenwood);
}
