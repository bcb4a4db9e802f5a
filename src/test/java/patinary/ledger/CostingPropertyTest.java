package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Purchases and uses of one supply against the textbook rule worked out another way: without lots that wait, without
 * running totals, in exact fractions.
 */
class CostingPropertyTest {

    /** @param cents below zero for a use, else the cost of a purchase */
    record Step(BigDecimal quantity, long cents) {
        boolean isUse() {
            return cents < 0;
        }
    }

    @Provide
    Arbitrary<List<Step>> steps() {
        return Combinators.combine(
                        Arbitraries.bigDecimals()
                                .between(new BigDecimal("0.001"), BigDecimal.TEN)
                                .ofScale(3),
                        Arbitraries.oneOf(
                                Arbitraries.just(-1L), Arbitraries.longs().between(0, 5_000)))
                .as(Step::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(25);
    }

    /** What was used cost what the oldest purchases of that quantity together cost, the last one in part. */
    @Property(tries = 1_000)
    void firstInFirstOutCostsTheOldestPurchases(@ForAll("steps") List<Step> steps) {
        BigDecimal used = BigDecimal.ZERO;
        List<Step> bought = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).isUse()) {
                used = used.add(steps.get(i).quantity());
            } else {
                bought.add(steps.get(i));
            }
            assertThat(story(steps.subList(0, i + 1)).told().on(Account.PIECES)).isEqualTo(oldest(bought, used));
        }
    }

    /** Rounding may part the books from exact fractions by half a cent for each purchase, never more. */
    @Property(tries = 1_000)
    void movingAverageFollowsTheExactAverage(@ForAll("steps") List<Step> steps) {
        BigDecimal quantity = BigDecimal.ZERO;
        BigDecimal cost = BigDecimal.ZERO;
        long purchases = 0;
        for (Step step : withoutUsesAhead(steps)) {
            if (step.isUse()) {
                BigDecimal left = quantity.subtract(step.quantity());
                cost = cost.multiply(left).divide(quantity, MathContext.DECIMAL128);
                quantity = left;
            } else {
                quantity = quantity.add(step.quantity());
                cost = cost.add(BigDecimal.valueOf(step.cents()));
                purchases++;
            }
        }
        long books = story(withoutUsesAhead(steps)).told(StockMethod.AVERAGE).cost(StockPlace.BENCH);
        assertThat(cost.subtract(BigDecimal.valueOf(books)).abs().doubleValue()).isLessThanOrEqualTo(0.5 * purchases);
    }

    private static long oldest(List<Step> bought, BigDecimal used) {
        BigDecimal missing = used;
        long cents = 0;
        for (Step purchase : bought) {
            BigDecimal part = missing.min(purchase.quantity());
            cents += BigDecimal.valueOf(purchase.cents())
                    .multiply(part)
                    .divide(purchase.quantity(), 0, RoundingMode.HALF_UP)
                    .longValueExact();
            missing = missing.subtract(part);
        }
        return cents;
    }

    /** Puts off each use until enough is there; what never is falls away. */
    private static List<Step> withoutUsesAhead(List<Step> steps) {
        List<Step> result = new ArrayList<>();
        Deque<Step> ahead = new ArrayDeque<>();
        BigDecimal there = BigDecimal.ZERO;
        for (Step step : steps) {
            if (step.isUse()) {
                ahead.add(step);
            } else {
                there = there.add(step.quantity());
                result.add(step);
            }
            while (!ahead.isEmpty() && ahead.getFirst().quantity().compareTo(there) < 0) {
                there = there.subtract(ahead.getFirst().quantity());
                result.add(ahead.removeFirst());
            }
        }
        return result;
    }

    private static Story story(List<Step> steps) {
        Story story = new Story();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            String quantity = step.quantity().toPlainString();
            if (step.isUse()) {
                story.used(i + 1, quantity, BOWL);
            } else {
                story.bought(i + 1, quantity, step.cents());
            }
        }
        return story;
    }
}
