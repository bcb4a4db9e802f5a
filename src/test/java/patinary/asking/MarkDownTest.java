package patinary.asking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.money.PriceEndings;

/** Worked by hand; common practice, no source. Figures are invented. */
class MarkDownTest {

    private static final List<MarkDown.Step> PLAN =
            List.of(new MarkDown.Step(30, Percent.of("10")), new MarkDown.Step(60, Percent.of("25")));

    /**
     * First price, present price, floor, days; then what is suggested with endings .00 and .95, or nothing.
     * 48.00 less 10 % is 43.20, up to 43.95; less 25 % it is 36.00. 45.55 less 10 % is 40.995, rounded up to 41.00.
     */
    @ParameterizedTest
    @CsvSource({
        "4800, 4800, 1200, 29, ",
        "4800, 4800, 1200, 30, 4395",
        "4800, 4395, 1200, 45, ",
        "4800, 4395, 1200, 60, 3600",
        "4800, 4800, 1200, 200, 3600",
        "4800, 4800, 3650, 60, 3695",
        "4800, 3695, 3650, 60, ",
        "4800, 3500, 1200, 60, ",
        "4800, 4800, 5000, 60, ",
        "4555, 4555, 1200, 30, 4100",
    })
    void suggestsByTheLastStepReached(long first, long present, long floor, long days, @Nullable Long suggested) {
        Optional<Amount> price = MarkDown.of(
                        PLAN, days, Amount.of(first), Amount.of(present), Amount.of(floor), endings(".00 .95"))
                .map(MarkDown::price);
        assertThat(price).isEqualTo(Optional.ofNullable(suggested).map(Amount::of));
    }

    @Test
    void saysThatTheFloorDecided() {
        MarkDown down = MarkDown.of(PLAN, 60, Amount.of(4800), Amount.of(4800), Amount.of(3650), endings(""))
                .orElseThrow();
        assertThat(down.marked()).isEqualTo(Amount.of(3600));
        assertThat(down.price()).isEqualTo(Amount.of(3650));
        assertThat(down.atFloor()).isTrue();
    }

    @Test
    void withoutAFloorNothingIsSuggested() {
        assertThat(MarkDown.of(PLAN, 99, Amount.of(4800), Amount.of(4800), null, endings("")))
                .isEmpty();
    }

    @Property
    void isNeverBelowTheFloorAndAlwaysLower(
            @ForAll @LongRange(min = 0, max = 9000) long first,
            @ForAll @LongRange(min = 0, max = 9000) long present,
            @ForAll @LongRange(min = 0, max = 9000) long floor,
            @ForAll @IntRange(min = 0, max = 90) int days) {
        PriceEndings endings = endings(".00 .95");
        MarkDown.of(PLAN, days, Amount.of(first), Amount.of(present), Amount.of(floor), endings)
                .ifPresent(down -> {
                    assertThat(down.price()).isGreaterThanOrEqualTo(Amount.of(floor));
                    assertThat(down.price()).isLessThan(Amount.of(present));
                    assertThat(down.price().minor() % 100).isIn(0L, 95L);
                    assertThat(days).isGreaterThanOrEqualTo(down.step().afterDays());
                    // Taken, it is not suggested a second time.
                    assertThat(MarkDown.of(PLAN, days, Amount.of(first), down.price(), Amount.of(floor), endings))
                            .isEmpty();
                });
    }

    private static PriceEndings endings(String typed) {
        return PriceEndings.parse(typed, 2).orElseThrow();
    }
}
