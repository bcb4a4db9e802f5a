package patinary.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import patinary.ledger.Account;

/** Dated rows leave no day or year out and claim none twice; every mapped meaning has a line. */
class DatedTablesTest {

    @Test
    void mileageRatesFollowEachOtherDayByDay() throws IOException {
        Map<String, List<CSVRecord>> byPlace =
                Table.read("mileage-rates.csv").rows().stream().collect(Collectors.groupingBy(r -> r.get(0)));
        for (List<CSVRecord> rows : byPlace.values()) {
            rows.sort(Comparator.comparing(r -> LocalDate.parse(r.get("from"))));
            for (int i = 0; i < rows.size(); i++) {
                LocalDate from = LocalDate.parse(rows.get(i).get("from"));
                assertThat(from).isBefore(LocalDate.parse(rows.get(i).get("to")));
                if (i > 0) {
                    assertThat(from)
                            .isEqualTo(
                                    LocalDate.parse(rows.get(i - 1).get("to")).plusDays(1));
                }
            }
        }
    }

    @Test
    void taxLinesFollowEachOtherYearByYear() throws IOException {
        Map<String, List<CSVRecord>> byMeaning = Table.read("tax-lines.csv").rows().stream()
                .collect(Collectors.groupingBy(r -> r.get("table") + "|" + r.get("meaning")));
        Map<String, Set<Integer>> lastYears = new HashMap<>();
        byMeaning.forEach((meaning, rows) -> {
            rows.sort(Comparator.comparing(DatedTablesTest::from));
            for (int i = 0; i < rows.size(); i++) {
                assertThat(from(rows.get(i))).as(meaning).isLessThanOrEqualTo(to(rows.get(i)));
                if (i > 0) {
                    assertThat(from(rows.get(i))).as(meaning).isEqualTo(to(rows.get(i - 1)) + 1);
                }
            }
            lastYears
                    .computeIfAbsent(rows.get(0).get("table"), t -> new HashSet<>())
                    .add(to(rows.get(rows.size() - 1)));
        });
        assertThat(lastYears.values()).as("every line of a table runs as far").allMatch(years -> years.size() == 1);
    }

    /** Two meanings never stand on one line of one year: the swap of 27a and 27b is keyed by meaning. */
    @Test
    void noLineHasTwoMeaningsInAYear() throws IOException {
        for (int year = 2023; year <= 2026; year++) {
            int y = year;
            assertThat(Table.read("tax-lines.csv").rows().stream()
                            .filter(r -> from(r) <= y && y <= to(r))
                            .map(r -> r.get("table") + "|" + r.get("line")))
                    .as("year %s", year)
                    .doesNotHaveDuplicates();
        }
    }

    /**
     * Sources: 2023 Instructions for Schedule C; two summaries citing the 2025 form. 2024 is from memory and 2026 carried
     * over, and marked so in the file.
     */
    @ParameterizedTest
    @CsvSource({
        "2023, other_expenses, 27a",
        "2023, energy_buildings, 27b",
        "2024, other_expenses, 27a",
        "2025, other_expenses, 27b",
        "2025, energy_buildings, 27a",
        "2025, gross_receipts, 1",
        "2023, cogs_total, 42"
    })
    void scheduleCLinesAreThoseOfTheirYear(int year, String meaning, String line) throws IOException {
        assertThat(Table.read("tax-lines.csv").rows().stream()
                        .filter(r -> r.get("table").equals("us-schedule-c"))
                        .filter(r -> r.get("meaning").equals(meaning) && from(r) <= year && year <= to(r))
                        .map(r -> r.get("line")))
                .containsExactly(line);
    }

    @Test
    void everyMappedMeaningHasALineInEveryYearOfItsTable() throws IOException {
        Map<String, Set<String>> lines = new TreeMap<>();
        for (CSVRecord row : Table.read("tax-lines.csv").rows()) {
            lines.computeIfAbsent(row.get("table"), t -> new HashSet<>()).add(row.get("meaning"));
        }
        for (CSVRecord row : Table.read("tax-map.csv").rows()) {
            assertThat(lines.get(row.get("table"))).contains(row.get("meaning"));
        }
    }

    @Test
    void everyTableMapsTheSameAccountsAndEveryCategory() throws IOException {
        Set<String> categories = Set.copyOf(Table.read("expense-categories.csv").keys("key"));
        Map<String, Set<String>> mapped = new TreeMap<>();
        for (CSVRecord row : Table.read("tax-map.csv").rows()) {
            mapped.computeIfAbsent(row.get("table"), t -> new HashSet<>())
                    .add(row.get("account") + "|" + row.get("category"));
        }
        assertThat(mapped.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        Set.copyOf(Table.read("tax-lines.csv").keys("table")));
        assertThat(Set.copyOf(mapped.values())).hasSize(1);
        assertThat(mapped.get("plain"))
                .containsAll(categories.stream().map(c -> "EXPENSE|" + c).toList());
        assertThat(mapped.get("plain")).hasSize(categories.size() + 13);
    }

    @Test
    void mapsOnlyAccountsOfTheLedger() throws IOException {
        for (CSVRecord row : Table.read("tax-map.csv").rows()) {
            Account account = Account.valueOf(row.get("account"));
            if (account == Account.EXPENSE) {
                assertThat(row.get("category")).isNotEmpty();
            } else if (account != Account.OTHER_INCOME) {
                assertThat(row.get("category")).isEmpty();
            }
            assertThat(account.isStock()).isFalse();
        }
    }

    /** A row is read in its source, or says plainly that it must be checked. */
    @Test
    void everyLineSaysHowWellItIsKnown() throws IOException {
        for (CSVRecord row : Table.read("tax-lines.csv").rows()) {
            assertThat(row.get("status")).matches("read|read, secondary|own|.*check against the current form");
            assertThat(row.get("source")).isNotBlank();
        }
    }

    private static int from(CSVRecord row) {
        return row.get("year_from").isEmpty() ? 0 : Integer.parseInt(row.get("year_from"));
    }

    private static int to(CSVRecord row) {
        return row.get("year_to").isEmpty() ? 9999 : Integer.parseInt(row.get("year_to"));
    }
}
