package patinary.asking;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;

/**
 * What her plan says of an offer: docs/handbook/what-to-ask.md. A suggestion, never a change. Common practice, no source.
 *
 * @param step the step that is reached
 * @param marked the first price less the step's percent, rounded up to a minor unit
 * @param price what to ask now: the marked price, or the floor where that is higher, up to the next of her endings
 * @param atFloor whether the floor decided
 */
record MarkDown(Step step, Amount marked, Amount price, boolean atFloor) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** After so many days on offer, so much less than the price first asked. */
    record Step(int afterDays, Percent percent) {}

    /**
     * The suggestion for an offer.
     *
     * @param days on offer, pauses left out
     * @param floor no lower price; null where no price covers what is in it, and so nothing is suggested
     * @return nothing where no step is reached, or the price is no higher than the plan asks already
     */
    static Optional<MarkDown> of(
            List<Step> plan,
            long days,
            Amount firstPrice,
            Amount presentPrice,
            @Nullable Amount floor,
            PriceEndings endings) {
        if (floor == null) {
            return Optional.empty();
        }
        return plan.stream()
                .filter(step -> days >= step.afterDays())
                .max(Comparator.comparing(Step::afterDays))
                .map(step -> to(step, firstPrice, floor, endings))
                .filter(down -> down.price().compareTo(presentPrice) < 0);
    }

    private static MarkDown to(Step step, Amount firstPrice, Amount floor, PriceEndings endings) {
        Amount marked = firstPrice.part(HUNDRED.subtract(step.percent().value()), HUNDRED, RoundingMode.CEILING);
        return new MarkDown(step, marked, endings.upFrom(marked.max(floor)), floor.compareTo(marked) > 0);
    }
}
