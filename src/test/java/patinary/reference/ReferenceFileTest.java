package patinary.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class ReferenceFileTest {

    @Test
    void rowsAreReadByTheNamesOfTheirColumns() {
        assertThat(ReferenceFile.rows("tax-years"))
                .filteredOn(row -> row.get("table").equals("uk-self-employment-short"))
                .extracting(row -> row.get("first_month") + "/" + row.get("first_day"))
                .containsExactly("4/6");
    }

    @Test
    void saysWhichFileIsMissing() {
        assertThatThrownBy(() -> ReferenceFile.rows("no-such-rates"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("/db/reference/no-such-rates.csv");
    }

    @Test
    void aRowHoldsFromItsFirstYearToItsLast() {
        CSVRecord of2025 = ReferenceFile.rows("tax-lines").stream()
                .filter(row -> row.get("year_from").equals("2025")
                        && row.get("year_to").equals("2025"))
                .findFirst()
                .orElseThrow();
        CSVRecord always = ReferenceFile.rows("tax-lines").stream()
                .filter(row -> row.get("table").equals("plain"))
                .findFirst()
                .orElseThrow();

        assertThat(ReferenceFile.holdsIn(of2025, 2024)).isFalse();
        assertThat(ReferenceFile.holdsIn(of2025, 2025)).isTrue();
        assertThat(ReferenceFile.holdsIn(of2025, 2026)).isFalse();
        assertThat(ReferenceFile.holdsIn(always, 1987)).isTrue();
    }
}
