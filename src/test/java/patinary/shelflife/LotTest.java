package patinary.shelflife;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.measure.Dimension;

/** The rule of docs/handbook/shelf-life.md; near is within 14 days: a rule of thumb, no source. */
class LotTest {

    private static final LocalDate TODAY = LocalDate.of(2025, 4, 1);

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "2025-03-05, 30, 2025-03-31, 2025-03-31, PAST",
                "2025-03-05, 30, -, 2025-04-04, SOON",
                "2025-03-05, -, -, -, UNKNOWN",
                "-, 30, -, -, UNKNOWN",
                "-, -, 2025-04-01, 2025-04-01, SOON",
                "-, -, 2025-04-15, 2025-04-15, SOON",
                "-, -, 2025-04-16, 2025-04-16, GOOD",
                "2025-03-30, 5, 2026-01-01, 2025-04-04, SOON"
            })
    void theEarlierOfLabelAndOpeningHolds(
            @Nullable LocalDate opened,
            @Nullable Integer days,
            @Nullable LocalDate label,
            @Nullable LocalDate best,
            Lot.Standing standing) {
        Lot lot = new Lot(
                new UUID(0, 1),
                new UUID(0, 2),
                "Pond green",
                Dimension.VOLUME,
                "RECEIPT",
                LocalDate.of(2025, 3, 1),
                BigDecimal.TEN,
                BigDecimal.ONE,
                opened,
                label,
                days);
        assertThat(lot.best().orElse(null)).isEqualTo(best);
        assertThat(lot.standing(TODAY)).isEqualTo(standing);
    }
}
