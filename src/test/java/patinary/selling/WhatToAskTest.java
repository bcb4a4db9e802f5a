package patinary.selling;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;

/** docs/handbook/what-to-ask.md. Channels and figures are invented. */
class WhatToAskTest {

    private static final LocalDate DAY = LocalDate.of(2025, 1, 1);

    /** High enough that above it every random rule of these tests is one rising line. */
    private static final long TOP = 16_000;

    /** The worked example of the handbook: 10 % of price and shipping + 0.30; 3 % of all with tax + 0.25. */
    private static final Terms EXAMPLE = new Terms(
            new FeeRule(
                    DAY,
                    Percent.of("10"),
                    Amount.of(30),
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    Percent.of("3"),
                    Amount.of(25)),
            Amount.of(600),
            Percent.of("8"),
            false,
            Amount.of(750));

    /** By hand: tax 3.20; fee 10 % of 46.00 + 0.30 = 4.90; payment 3 % of 49.20 = 1.476, + 0.25 = 1.73; 46.00 − 14.13. */
    @Test
    void whatRemainsOfFortyByHand() {
        Remains remains = EXAMPLE.remains(Amount.of(4000));
        assertThat(remains.charged().tax()).isEqualTo(Amount.of(320));
        assertThat(remains.fee()).isEqualTo(Amount.of(490));
        assertThat(remains.payment()).isEqualTo(Amount.of(173));
        assertThat(remains.net()).isEqualTo(Amount.of(3187));
    }

    /**
     * The closed form of the handbook, worked by hand: (30.00 + 0.30 + 0.25 + 7.50 − 6.00 × 0.87) ÷ (1 − 0.10 − 0.0324)
     * = 32.83 ÷ 0.8676 = 37.8400…; at 37.84 there remain 30.00, at 37.83 29.99.
     */
    @Test
    void theLinearCaseIsItsClosedForm() {
        BigDecimal closed = new BigDecimal("32.83").divide(new BigDecimal("0.8676"), 6, RoundingMode.HALF_UP);
        assertThat(closed).isBetween(new BigDecimal("37.84"), new BigDecimal("37.8401"));
        assertThat(WhatToAsk.smallest(EXAMPLE, Amount.of(3000))).contains(Amount.of(3784));
        assertThat(EXAMPLE.net(3784)).isEqualTo(3000);
        assertThat(EXAMPLE.net(3783)).isEqualTo(2999);
    }

    /**
     * 12 % of the whole price above 50.00, 5 % up to it: at 50.00 remain 47.50, at 50.01 44.01. For 46.00 the price 48.42
     * would do, but 50.01 would not: so it is 52.27 (the fee is 6.2724, rounded 6.27; at 52.26 it is 6.27 too).
     */
    @Test
    void aStepOnTheWholePriceIsNotAskedInto() {
        Terms cliff = terms(step(true));
        assertThat(cliff.net(5000)).isEqualTo(4750);
        assertThat(cliff.net(5001)).isEqualTo(4401);
        assertThat(cliff.net(4843)).isGreaterThanOrEqualTo(4600);
        assertThat(brute(cliff, 4600)).contains(Amount.of(5227));
        assertThat(WhatToAsk.smallest(cliff, Amount.of(4600))).contains(Amount.of(5227));
        assertThat(WhatToAsk.smallest(terms(step(false)), Amount.of(4600))).contains(Amount.of(4842));
    }

    @Test
    void whereAllIsKeptThereIsNoPrice() {
        Terms all = terms(new FeeRule(DAY, Percent.of("100"), Amount.ZERO));
        assertThat(WhatToAsk.smallest(all, Amount.of(1))).isEmpty();
    }

    @Test
    void whatAlreadyRemainsAtNothingNeedsNoPrice() {
        assertThat(WhatToAsk.smallest(
                        new Terms(null, Amount.of(500), Percent.ZERO, false, Amount.ZERO), Amount.of(400)))
                .contains(Amount.ZERO);
    }

    /** Every price one by one, from above every step down: the definition itself. */
    @Property(tries = 400)
    void agreesWithEveryPriceTriedOneByOne(
            @ForAll("terms") Terms terms, @ForAll @LongRange(min = -500, max = 6000) long target) {
        assertThat(WhatToAsk.smallest(terms, Amount.of(target))).isEqualTo(brute(terms, target));
    }

    private static Optional<Amount> brute(Terms terms, long target) {
        long price = TOP;
        assertThat(terms.net(price)).isGreaterThan(target);
        while (price > 0 && terms.net(price - 1) >= target) {
            price--;
        }
        return Optional.of(Amount.of(price));
    }

    private static FeeRule step(boolean whole) {
        return new FeeRule(
                DAY,
                Percent.of("5"),
                Amount.ZERO,
                FeeBase.PRICE,
                null,
                null,
                Amount.of(5000),
                Percent.of("12"),
                null,
                null,
                whole,
                null,
                null);
    }

    private static Terms terms(FeeRule rule) {
        return new Terms(rule, Amount.ZERO, Percent.ZERO, false, Amount.ZERO);
    }

    @Provide
    Arbitrary<Terms> terms() {
        return Combinators.combine(rules(), amounts(800), percents(20), Arbitraries.of(true, false), amounts(900))
                .as(Terms::new);
    }

    private static Arbitrary<FeeRule> rules() {
        Arbitrary<Object[]> steps = Combinators.combine(
                        amounts(4000).filter(Amount::isPositive).injectNull(0.4),
                        percents(25),
                        Arbitraries.longs().between(1, 3000).injectNull(0.5),
                        percents(25),
                        Arbitraries.of(true, false, null))
                .as((above, second, more, third, whole) -> above == null
                        ? new Object[] {null, null, null, null, null}
                        : new Object[] {
                            above,
                            second,
                            more == null ? null : above.plus(Amount.of(more)),
                            more == null ? null : third,
                            whole
                        });
        Arbitrary<Object[]> limits = Combinators.combine(
                        amounts(300).injectNull(0.5), amounts(500).injectNull(0.5))
                .as((least, more) ->
                        new Object[] {least, more == null ? null : least == null ? more : more.plus(least)});
        return Combinators.combine(
                        percents(25),
                        amounts(100),
                        Arbitraries.of(FeeBase.values()).injectNull(0.2),
                        limits,
                        steps,
                        percents(10).injectNull(0.4),
                        amounts(60).injectNull(0.4))
                .as((percent, fixed, base, limit, step, payment, paymentFixed) -> new FeeRule(
                        DAY,
                        percent,
                        fixed,
                        base,
                        (Amount) limit[0],
                        (Amount) limit[1],
                        (Amount) step[0],
                        (Percent) step[1],
                        (Amount) step[2],
                        (Percent) step[3],
                        (Boolean) step[4],
                        payment,
                        paymentFixed));
    }

    private static Arbitrary<Amount> amounts(int most) {
        return Arbitraries.longs().between(0, most).map(Amount::of);
    }

    private static Arbitrary<Percent> percents(int most) {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, BigDecimal.valueOf(most))
                .ofScale(2)
                .map(Percent::new);
    }
}
