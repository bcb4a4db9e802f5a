package patinary.sending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/**
 * What a parcel costs by her own table. Carriers and prices are invented; the worked example is that of
 * docs/handbook/sending.md. That of several rows the cheapest that takes a parcel counts is common practice, no source.
 */
class RateTableTest {

    private static final LocalDate OLD = LocalDate.of(2025, 1, 1);
    private static final LocalDate NEW = LocalDate.of(2026, 1, 15);
    private static final BigDecimal POUND = new BigDecimal("453.59237");

    private static final RateTable TABLE = new RateTable(List.of(
            rate(OLD, 1, "", 610),
            rate(OLD, 4, "", 1000),
            rate(NEW, 1, "14 x 12 x 8 in", 655),
            rate(NEW, 4, "14 x 12 x 8 in", 1045),
            rate(NEW, 4, "", 1390)));

    @Test
    void theHandbooksParcel() {
        // 2 lb, 12 x 9 x 6 in: up to 4 lb, by the table of its day.
        assertThat(cost("2026-01-14", "907.18", "12 x 9 x 6 in")).contains(Amount.of(1000));
        assertThat(cost("2026-01-15", "907.18", "12 x 9 x 6 in")).contains(Amount.of(1045));
        // Exactly a pound is still up to a pound, a gram more is not.
        assertThat(cost("2026-03-01", "453.59237", "12 x 9 x 6 in")).contains(Amount.of(655));
        assertThat(cost("2026-03-01", "454.6", "12 x 9 x 6 in")).contains(Amount.of(1045));
        // Too long for the small size, or of a size that nobody took: the row that asks for none.
        assertThat(cost("2026-03-01", "400", "15 x 3 x 3 in")).contains(Amount.of(1390));
        assertThat(cost("2026-03-01", "400", "")).contains(Amount.of(1390));
    }

    @Test
    void whatNoRowTakesHasNoCost() {
        assertThat(cost("2024-12-31", "400", "")).as("before the table").isEmpty();
        assertThat(cost("2026-03-01", "1900", "")).as("too heavy").isEmpty();
        assertThat(new RateTable(List.of()).cost(NEW, POUND, Optional.empty())).isEmpty();
    }

    @Test
    void aParcelMayBeTurnedAlongItsSides() {
        assertThat(BoxSize.read("6 x 12 x 9 in")).isEqualTo(BoxSize.read("1 ft x 9 in x 6 in"));
        assertThat(BoxSize.read("8 x 14 x 12 in").fitsIn(BoxSize.read("14 x 12 x 8 in")))
                .isTrue();
        assertThat(BoxSize.read("30 x 20 x 10 cm").fitsIn(BoxSize.read("30 x 20 x 9.9 cm")))
                .isFalse();
    }

    @Test
    void aSizeIsThreeLengths() {
        for (String wrong :
                List.of("12 x 9 in", "12 x 9 x 6", "12 x 9 x 0 in", "12 x 9 x 6 lb", "a box", "1x1x1x1 cm")) {
            assertThatThrownBy(() -> BoxSize.read(wrong)).as(wrong).isInstanceOf(IllegalArgumentException.class);
            assertThat(BoxSize.kept(wrong)).as(wrong).isEmpty();
        }
        assertThat(BoxSize.kept("")).isEmpty();
    }

    @Property
    void neitherAHeavierNorALargerParcelIsCheaper(
            @ForAll @IntRange(min = 1, max = 2500) int grams,
            @ForAll @IntRange(min = 1, max = 60) int side,
            @ForAll @IntRange(max = 500) int more,
            @ForAll @IntRange(max = 20) int longer) {
        Optional<Amount> light = TABLE.cost(NEW, BigDecimal.valueOf(grams), Optional.of(cube(side)));
        Optional<Amount> heavy = TABLE.cost(NEW, BigDecimal.valueOf(grams + more), Optional.of(cube(side + longer)));

        heavy.ifPresent(cost -> {
            assertThat(light).isPresent();
            assertThat(light.get().minor()).isLessThanOrEqualTo(cost.minor());
        });
    }

    @Property
    void ofSeveralRowsTheCheapestThatTakesItIsMeant(@ForAll @IntRange(min = 1, max = 2500) int grams) {
        long least = TABLE.rates().stream()
                .filter(rate -> rate.validFrom().equals(NEW))
                .filter(rate -> rate.upTo().intValue() >= grams)
                .mapToLong(rate -> rate.cost().minor())
                .min()
                .orElse(-1);

        assertThat(TABLE.cost(NEW, BigDecimal.valueOf(grams), Optional.of(cube(1)))
                        .map(Amount::minor)
                        .orElse(-1L))
                .isEqualTo(least);
    }

    @Test
    void whatSeveralThingsWeighIsAddedAndHowTheyLieIsNotGuessed() {
        Unpacked.Thing tray = new Unpacked.Thing(new BigDecimal("600"), "9 x 6 x 1 in");
        Unpacked.Thing jug = new Unpacked.Thing(new BigDecimal("450.5"), "5 x 5 x 8 in");

        assertThat(Unpacked.of(List.of(tray))).isEqualTo(new Unpacked(new BigDecimal("600"), "9 x 6 x 1 in"));
        assertThat(Unpacked.of(List.of(tray, jug))).isEqualTo(new Unpacked(new BigDecimal("1050.5"), ""));
        assertThat(Unpacked.of(List.of(tray, new Unpacked.Thing(null, "")))).isEqualTo(new Unpacked(null, ""));
        assertThat(Unpacked.of(List.of())).isEqualTo(new Unpacked(null, ""));
    }

    private static Optional<Amount> cost(String day, String grams, String size) {
        return TABLE.cost(LocalDate.parse(day), new BigDecimal(grams), BoxSize.kept(size));
    }

    private static BoxSize cube(int centimetres) {
        BigDecimal side = BigDecimal.valueOf(centimetres);
        return new BoxSize(List.of(side, side, side));
    }

    private static Rate rate(LocalDate from, int pounds, String size, long cents) {
        return new Rate(from, POUND.multiply(BigDecimal.valueOf(pounds)), BoxSize.kept(size), Amount.of(cents));
    }
}
