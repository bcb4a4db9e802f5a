package patinary.counting;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog.Known;

/**
 * One of her measures as the page shows it; quantities in the supply's base unit.
 *
 * @param name empty for what was told in units or parts of a pack; the quantities are null then
 * @param really two significant digits, rounded half up: more would pretend to know more
 * @param times the ratio, for what is not a measure
 */
record MeasureView(
        String name,
        int spans,
        Eye.Verdict verdict,
        @Nullable BigDecimal now,
        @Nullable BigDecimal really,
        @Nullable BigDecimal low,
        @Nullable BigDecimal high,
        BigDecimal times) {

    private static final MathContext READ = new MathContext(2, RoundingMode.HALF_UP);

    static MeasureView of(Known supply, Eye.Judged judged) {
        Optional<BigDecimal> now = supply.facts().measures().stream()
                .filter(measure -> measure.name().equals(judged.name()))
                .map(Supply.Named::quantity)
                .findFirst();
        return new MeasureView(
                judged.name(),
                judged.spans(),
                judged.verdict(),
                now.orElse(null),
                now.map(size -> times(size, judged.ratio().ratio())).orElse(null),
                now.map(size -> times(size, judged.ratio().low())).orElse(null),
                now.map(size -> times(size, judged.ratio().high())).orElse(null),
                BigDecimal.valueOf(judged.ratio().ratio()).round(READ));
    }

    /** Whether it is worth correcting: it is off, and the new size reads differently. */
    public boolean canBeCorrected() {
        return verdict == Eye.Verdict.IS_OFF
                && now != null
                && really != null
                && really.signum() > 0
                && really.compareTo(now) != 0;
    }

    private static BigDecimal times(BigDecimal size, double ratio) {
        return size.multiply(BigDecimal.valueOf(ratio)).round(READ);
    }
}
