package patinary.selling;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import patinary.money.Amount;

/**
 * A bundle as it was sold: what the sale says of it, whatever became of the bundle since.
 *
 * @param parts its lines on the sale, at least one
 */
record SoldBundle(List<SaleLine> parts) {

    UUID id() {
        return bundle().bundleId();
    }

    int number() {
        return bundle().bundleNumber();
    }

    public String title() {
        return bundle().bundleTitle();
    }

    /** How many bundles. */
    public BigDecimal quantity() {
        return parts.get(0).quantity();
    }

    /** The price of one. */
    Amount price() {
        return parts.stream().map(SaleLine::price).collect(Amount.sum());
    }

    Amount discount() {
        return parts.stream().map(SaleLine::discount).collect(Amount.sum());
    }

    /** All of them, less the discount. */
    public Amount net() {
        return parts.stream().map(SaleLine::net).collect(Amount.sum());
    }

    private SaleLine.OfBundle bundle() {
        return Objects.requireNonNull(parts.get(0).bundle());
    }
}
