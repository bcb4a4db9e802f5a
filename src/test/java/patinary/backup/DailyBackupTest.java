package patinary.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand; the clock of Berlin went from 02:00 to 03:00 on 30 March 2025 and is two hours before UTC from then on. */
class DailyBackupTest {

    @ParameterizedTest
    @CsvSource(nullValues = "-", textBlock = """
            # hour | now                | last try             | good  | due
            3, 2025-03-10T10:00:00Z, -,                    false, true
            3, 2025-03-10T10:00:00Z, 2025-03-10T02:00:00Z, true,  false
            3, 2025-03-10T10:00:00Z, 2025-03-10T01:59:59Z, true,  true
            3, 2025-03-10T01:59:59Z, 2025-03-09T02:00:00Z, true,  false
            3, 2025-03-10T02:00:00Z, 2025-03-09T02:00:00Z, true,  true
            23, 2025-03-10T21:00:00Z, 2025-03-09T22:30:00Z, true, false
            23, 2025-03-10T22:00:00Z, 2025-03-09T22:30:00Z, true, true
            3, 2025-03-10T02:59:00Z, 2025-03-10T02:00:00Z, false, false
            3, 2025-03-10T03:00:00Z, 2025-03-10T02:00:00Z, false, true
            2, 2025-03-30T00:59:59Z, 2025-03-29T01:00:00Z, true,  false
            2, 2025-03-30T01:00:00Z, 2025-03-29T01:00:00Z, true,  true
            2, 2025-03-31T00:00:00Z, 2025-03-30T01:00:00Z, true,  true
            """)
    void isDueOnceADayAndAfterAPauseWhereItFailed(int hour, Instant now, Instant lastTry, boolean good, boolean due) {
        assertThat(new DailyBackup(hour, ZoneId.of("Europe/Berlin")).isDue(now, lastTry, good))
                .isEqualTo(due);
    }
}
