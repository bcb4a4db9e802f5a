package patinary.counting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.measure.Dimension;
import patinary.supplies.MeasureChange;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog.Known;
import patinary.supplies.SupplyLine;

/** An invented paint: a jar of 200 ml, a dab of 2 ml that was corrected to 3 ml from 1 March on. */
class SpansTest {

    private static final LocalDate MARCH = LocalDate.of(2026, 3, 1);
    private static final UUID ID = new UUID(1, 1);

    static Known paint(@Nullable String low, String dab, List<MeasureChange> changes) {
        Supply.Facts facts = new Supply.Facts(
                new UUID(2, 2),
                "Pond green",
                Dimension.VOLUME,
                null,
                low == null ? null : new BigDecimal(low),
                List.of(new Supply.Named("jar", BigDecimal.valueOf(200))),
                List.of(new Supply.Named("dab", new BigDecimal(dab))));
        return new Known(ID, facts, new SupplyLine(new UUID(2, 2), "Pond paints", ""), 0, changes);
    }

    private static final Known PAINT =
            paint(null, "3", List.of(new MeasureChange("dab", MARCH, new BigDecimal("2"), new BigDecimal("3"))));

    private static Spans.Count count(int day, String difference, boolean waste) {
        return new Spans.Count(new UUID(0, day), MARCH.plusDays(day), new BigDecimal(difference), waste, null);
    }

    private static Spans.Taken taken(int day, String typed, String quantity, boolean estimated) {
        return new Spans.Taken(MARCH.plusDays(day), typed, new BigDecimal(quantity), estimated);
    }

    /**
     * Before 1 March 5 dabs were 10 ml; now they would be 15. With 20 ml by eye the books had 30 ml; counted 6 ml less, so 36
     * were used. What was measured is left out.
     */
    @Test
    void usesAreReadWithTheMeasureAsItWasAndComparedAsItIs() {
        List<Span> spans = Spans.of(
                PAINT,
                List.of(count(5, "-6", false)),
                List.of(
                        taken(-4, "5 dabs", "10", true),
                        taken(1, "20 ml", "20", true),
                        taken(2, "40 ml", "40", false),
                        taken(6, "1 dab", "3", true)));
        assertThat(spans).hasSize(1);
        Span span = spans.get(0);
        assertThat(span.used()).isCloseTo(36, within(1e-9));
        assertThat(span.noted("dab")).isCloseTo(15, within(1e-9));
        assertThat(span.noted("")).isCloseTo(20, within(1e-9));
        assertThat(span.notedThen()).isCloseTo(30, within(1e-9));
        assertThat(span.stretch()).isCloseTo(1.2, within(1e-9));
        // Five dabs are five judgements of 3 ml; 20 ml is one.
        assertThat(span.squares()).isCloseTo(5 * 9 + 400, within(1e-9));
    }

    @Test
    void aUseBelongsToTheFirstCountAtOrAfterItsDay() {
        List<Span> spans = Spans.of(
                PAINT,
                List.of(count(5, "0", false), count(9, "0", true)),
                List.of(taken(5, "3 ml", "3", true), taken(6, "4 ml", "4", true), taken(10, "5 ml", "5", true)));
        assertThat(spans.get(0).noted()).isEqualTo(3);
        assertThat(spans.get(1).noted()).isEqualTo(4);
        assertThat(spans.get(0).tells()).isTrue();
        assertThat(spans.get(1).tells()).as("waste").isFalse();
    }

    /** A use of 10 ml that the count made 12, ten measured ml and a sale of 30: three uses of 52 ml in 26 weeks. */
    @Test
    void thePaceGoesByWhatWasReallyUsed() {
        CountFacts.Facts facts = new CountFacts.Facts(
                List.of(count(5, "-2", false)),
                List.of(
                        taken(1, "10 ml", "10", true),
                        taken(2, "10 ml", "10", false),
                        taken(-300, "9 ml", "9", false)));
        UseRate rate = Pace.of(
                        PAINT,
                        facts,
                        List.of(new Pace.Sold(MARCH.plusDays(3), BigDecimal.valueOf(30))),
                        MARCH.minusYears(1),
                        MARCH.plusDays(20))
                .orElseThrow();
        assertThat(rate.uses()).isEqualTo(3);
        assertThat(rate.perWeek()).isCloseTo(52 / 26.0, within(1e-9));
    }
}
