package patinary.taxbasis;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** The days of tax years. */
class YearStartsTest {

    private final YearStarts starts = YearStarts.load();

    @Test
    void theUnitedStatesCountCalendarYears() {
        assertThat(starts.first("us-schedule-c", 2025)).isEqualTo("2025-01-01");
        assertThat(starts.last("us-schedule-c", 2025)).isEqualTo("2025-12-31");
        assertThat(starts.year("us-schedule-c", LocalDate.of(2025, 12, 31))).isEqualTo(2025);
    }

    /** GOV.UK, Self Assessment tax returns: from 6 April to 5 April the following year. */
    @Test
    void theUnitedKingdomCountsFromTheSixthOfApril() {
        String table = "uk-self-employment-short";
        assertThat(starts.first(table, 2025)).isEqualTo("2025-04-06");
        assertThat(starts.last(table, 2025)).isEqualTo("2026-04-05");
        assertThat(starts.year(table, LocalDate.of(2026, 4, 5))).isEqualTo(2025);
        assertThat(starts.year(table, LocalDate.of(2026, 4, 6))).isEqualTo(2026);
        assertThat(starts.year(table, LocalDate.of(2026, 1, 1))).isEqualTo(2025);
    }

    @Test
    void aTableThatTheFileDoesNotKnowCountsCalendarYears() {
        assertThat(starts.first("an invented one", 2025)).isEqualTo("2025-01-01");
    }
}
