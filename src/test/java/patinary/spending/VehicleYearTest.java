package patinary.spending;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The miles of a vehicle's year. The rule: Temp. Treas. Reg. 1.274-5T(b)(6), as stated in Tax Court opinions (read): miles of each
 * business use and total miles of all use. The figures are invented and worked by hand.
 */
class VehicleYearTest {

    @ParameterizedTest
    @CsvSource({
        // start, end, business, commuting, total, other, over
        "48120.4, 53866.9, 812.6, 0, 5746.5, 4933.9, 0.0",
        "100, 100, 0, 0, 0, 0, 0",
        "100, 150, 40, 15, 50, -5, 5",
        "100, 150, 60, , 50, , 10",
        "100, , 60, 5, , , 0",
        ", 150, 60, 5, , , 0"
    })
    void theOdometerTellsTheRest(
            @Nullable BigDecimal start,
            @Nullable BigDecimal end,
            BigDecimal business,
            @Nullable BigDecimal commuting,
            @Nullable BigDecimal total,
            @Nullable BigDecimal other,
            BigDecimal over) {
        VehicleYear year = new VehicleYear(UUID.randomUUID(), "Van", null, 2025, start, end, business, commuting);
        assertThat(year.total()).isEqualTo(total);
        assertThat(year.other()).isEqualTo(other);
        assertThat(year.over()).isEqualByComparingTo(over);
    }

    @Property
    void thePartsAddUpToTheOdometer(
            @ForAll @IntRange(max = 100_000) int run,
            @ForAll @IntRange(max = 100_000) int business,
            @ForAll @IntRange(max = 100_000) int commuting) {
        VehicleYear year = new VehicleYear(
                UUID.randomUUID(),
                "Van",
                null,
                2025,
                tenths(500),
                tenths(500 + run),
                tenths(business),
                tenths(commuting));
        assertThat(tenths(business).add(tenths(commuting)).add(year.other())).isEqualByComparingTo(tenths(run));
        assertThat(year.over().signum() > 0).isEqualTo(business + commuting > run);
    }

    private static BigDecimal tenths(int tenths) {
        return BigDecimal.valueOf(tenths, 1);
    }
}
