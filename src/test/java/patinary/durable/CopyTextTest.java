package patinary.durable;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The rules are those of the PostgreSQL manual, "COPY", section "Text Format". */
class CopyTextTest {

    @Test
    void valuesAreParted() {
        assertThat(text(1, LocalDate.of(2026, 5, 4), true, new BigDecimal("1E+3")))
                .isEqualTo("1\t2026-05-04\ttrue\t1000\n");
    }

    @Test
    void nothingIsNotAnEmptyText() {
        assertThat(text("", null, "")).isEqualTo("\t\\N\t\n");
    }

    @Test
    void whatWouldPartValuesIsMarked() {
        assertThat(text("a\tb\nc\rd\\e\\N\\.")).isEqualTo("a\\tb\\nc\\rd\\\\e\\\\N\\\\.\n");
    }

    @Test
    void everyRowIsALine() {
        assertThat(CopyText.of(List.of(new @Nullable Object[] {"a"}, new @Nullable Object[] {"b"})))
                .isEqualTo("a\nb\n");
    }

    @Test
    void aMomentKeepsItsZone() {
        assertThat(text(OffsetDateTime.of(2026, 5, 4, 10, 0, 0, 0, ZoneOffset.UTC)))
                .isEqualTo("2026-05-04T10:00Z\n");
    }

    private static String text(@Nullable Object... row) {
        return CopyText.of(List.<@Nullable Object[]>of(row));
    }
}
