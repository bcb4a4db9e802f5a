package patinary.asking;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;
import patinary.selling.FeeBase;
import patinary.selling.FeeRule;
import patinary.selling.Terms;
import patinary.selling.UsualTerms;

/** docs/handbook/what-to-ask.md; worked by hand, common practice, no source. Channels and figures are invented. */
class AskedPriceTest {

    private static final LocalDate DAY = LocalDate.of(2025, 1, 1);

    /** High enough that above it every random rule of this test is one rising line. */
    private static final long TOP = 16_000;

    /**
     * 12 % of the whole price above 50.00, 5 % up to it: for 46.00 the price is 52.27, though 48.42 would do, as 50.01 would
     * not. Of prices in .95 that is 52.95; 48.95 and 49.95 leave enough but 50.95 does not.
     */
    @Test
    void anEndingBelowTheStepIsNotTaken() {
        Terms cliff = usual(0, 0).under(rule("5", null, null, 5000L, "12", true));
        AskedPrice price = AskedPrice.of(cliff, Amount.of(4600), endings(".95")).orElseThrow();
        assertThat(price.least()).isEqualTo(Amount.of(5227));
        assertThat(price.asked()).isEqualTo(Amount.of(5295));
        // 12 % of 52.95 is 6.354, rounded 6.35.
        assertThat(price.remains()).isEqualTo(Amount.of(4660));
    }

    /** With no fee at all the price is the need itself, and 20.01 with endings .00 and .95 is 20.95. */
    @Test
    void withoutARuleOnlyTheEndingIsAdded() {
        AskedPrice price = AskedPrice.of(usual(0, 0).under(null), Amount.of(2001), endings(".00 .95"))
                .orElseThrow();
        assertThat(price.least()).isEqualTo(Amount.of(2001));
        assertThat(price.asked()).isEqualTo(Amount.of(2095));
    }

    /** 10 % of the price; putting it up costs 0.20: for 18.00 it is (18.00 + 0.20) ÷ 0.9 = 20.222…, so 20.22 or more. */
    @Test
    void theFeeForAnOfferIsAmongWhatIsSpent() {
        FeeRule rule = new FeeRule(
                DAY,
                Percent.of("10"),
                Amount.ZERO,
                FeeBase.PRICE,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                Amount.of(20),
                Amount.of(9900));
        Terms terms = ChannelPrices.terms(rule, usual(0, 0));
        // 20.22 less 2.02 and 0.20 leaves 18.00; 20.21 less 2.02 and 0.20 leaves 17.99.
        assertThat(AskedPrice.of(terms, Amount.of(1800), endings(""))
                        .orElseThrow()
                        .least())
                .isEqualTo(Amount.of(2022));
        assertThat(terms.remains(Amount.of(2022)).net()).isEqualTo(Amount.of(1800));
        assertThat(rule.on(Amount.of(2022))).isEqualTo(Amount.of(202));
    }

    /** The tray of the handbook: for 46.95 the price is 57.38, of which 46.95 remain; with .00 and .95 it is 57.95. */
    @Test
    void theWorkedExampleOfTheHandbook() {
        FeeRule rule = new FeeRule(
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
                Amount.of(25));
        Terms terms = new UsualTerms(Amount.of(600), Amount.of(750), Percent.of("8"), false).under(rule);
        AskedPrice price =
                AskedPrice.of(terms, Amount.of(4695), endings(".00 .95")).orElseThrow();
        assertThat(price.least()).isEqualTo(Amount.of(5738));
        assertThat(terms.remains(Amount.of(5738)).net()).isEqualTo(Amount.of(4695));
        assertThat(price.asked()).isEqualTo(Amount.of(5795));
    }

    /** Every price one by one, from above down: the smallest with an ending of which, and of all above, enough remains. */
    @Property(tries = 300)
    void isTheSmallestWithAnEndingThatMeetsTheNeedFromThereOn(
            @ForAll("terms") Terms terms,
            @ForAll("ends") String typed,
            @ForAll @LongRange(min = 0, max = 6000) long need) {
        AskedPrice price = AskedPrice.of(terms, Amount.of(need), endings(typed)).orElseThrow();
        assertThat(price.asked().minor()).isEqualTo(brute(terms, typed, need));
        assertThat(price.remains().minor()).isGreaterThanOrEqualTo(need);
    }

    private static long brute(Terms terms, String typed, long need) {
        Set<String> ends = Set.of(typed.isEmpty() ? new String[0] : typed.split(" "));
        long best = -1;
        for (long price = TOP; price >= 0 && net(terms, price) >= need; price--) {
            String text = "%d.%02d".formatted(price / 100, price % 100);
            if (ends.isEmpty() || ends.stream().anyMatch(text::endsWith)) {
                best = price;
            }
        }
        return best;
    }

    private static long net(Terms terms, long price) {
        return terms.remains(Amount.of(price)).net().minor();
    }

    @Provide
    Arbitrary<String> ends() {
        return Arbitraries.of("", ".00", ".00 .95", ".49 .99", "9.50", "5.00 9.95");
    }

    @Provide
    Arbitrary<Terms> terms() {
        Arbitrary<FeeRule> rules = Combinators.combine(
                        percents(25),
                        Arbitraries.longs().between(0, 300).injectNull(0.5),
                        Arbitraries.longs().between(300, 900).injectNull(0.5),
                        Arbitraries.longs().between(1, 6000).injectNull(0.4),
                        percents(25),
                        Arbitraries.of(true, false))
                .as((percent, least, most, above, second, whole) ->
                        rule(percent.toPlainString(), least, most, above, second.toPlainString(), whole));
        return Combinators.combine(
                        rules.injectNull(0.1),
                        Arbitraries.longs().between(0, 800),
                        Arbitraries.longs().between(0, 900),
                        percents(20),
                        Arbitraries.of(true, false))
                .as((rule, shipping, outlay, tax, taxed) ->
                        new UsualTerms(Amount.of(shipping), Amount.of(outlay), new Percent(tax), taxed).under(rule));
    }

    private static Arbitrary<BigDecimal> percents(int most) {
        return Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, BigDecimal.valueOf(most))
                .ofScale(2);
    }

    private static FeeRule rule(
            String percent,
            @Nullable Long least,
            @Nullable Long most,
            @Nullable Long above,
            String second,
            boolean whole) {
        return new FeeRule(
                DAY,
                Percent.of(percent),
                Amount.ZERO,
                FeeBase.PRICE,
                least == null ? null : Amount.of(least),
                most == null ? null : Amount.of(most),
                above == null ? null : Amount.of(above),
                above == null ? null : Percent.of(second),
                null,
                null,
                whole,
                null,
                null);
    }

    private static UsualTerms usual(long shipping, long outlay) {
        return new UsualTerms(Amount.of(shipping), Amount.of(outlay), Percent.ZERO, false);
    }

    private static PriceEndings endings(String typed) {
        return PriceEndings.parse(typed, 2).orElseThrow();
    }
}
