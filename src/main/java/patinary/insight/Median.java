package patinary.insight;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The middle of whole numbers; of an even count the mean of the two in the middle. */
final class Median {

    private static final BigDecimal HALF = new BigDecimal("0.5");

    private Median() {}

    /** Nothing where there is no number. */
    static Optional<BigDecimal> of(Collection<Integer> numbers) {
        if (numbers.isEmpty()) {
            return Optional.empty();
        }
        List<Integer> sorted = numbers.stream().sorted().toList();
        int upper = sorted.size() / 2;
        int lower = (sorted.size() - 1) / 2;
        long both = (long) sorted.get(lower) + sorted.get(upper);
        return Optional.of(BigDecimal.valueOf(both).multiply(HALF).stripTrailingZeros());
    }
}
