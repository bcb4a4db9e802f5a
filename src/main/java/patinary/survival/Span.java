package patinary.survival;

/** A lower and an upper limit; NaN where there is none. */
public record Span(double low, double high) {

    static final Span UNKNOWN = new Span(Double.NaN, Double.NaN);

    public boolean isUnknown() {
        return Double.isNaN(low) && Double.isNaN(high);
    }
}
