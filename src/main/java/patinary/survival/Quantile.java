package patinary.survival;

/** A day by which a share is sold, with 95 % limits; NaN where it is not reached yet. */
public record Quantile(double day, double low, double high) {

    public boolean isReached() {
        return !Double.isNaN(day);
    }
}
