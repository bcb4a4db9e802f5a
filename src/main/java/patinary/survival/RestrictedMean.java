package patinary.survival;

/** Mean days on offer within a span that is the same for all groups, with its standard error. */
public record RestrictedMean(double days, double standardError) {}
