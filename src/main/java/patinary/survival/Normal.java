package patinary.survival;

/** The standard normal distribution, as far as 95 % limits need it. */
public final class Normal {

    /** Its 0.975 quantile, to sixteen digits: between it and its negative lie 95 %. */
    public static final double Z = 1.959963984540054;

    private Normal() {}
}
