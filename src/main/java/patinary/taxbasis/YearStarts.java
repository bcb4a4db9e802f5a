package patinary.taxbasis;

import java.time.LocalDate;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import patinary.reference.ReferenceFile;

/**
 * On which day a tax year begins, by tax table: {@code db/reference/tax-years.csv}. A year bears the number of the calendar
 * year in which it begins.
 */
final class YearStarts {

    private final List<CSVRecord> rows;

    private YearStarts(List<CSVRecord> rows) {
        this.rows = rows;
    }

    /** @throws IllegalStateException where the file is not there */
    static YearStarts load() {
        return new YearStarts(ReferenceFile.rows("tax-years"));
    }

    /** The first day of a year; 1 January where the file has no row for the table and year. */
    LocalDate first(String table, int year) {
        return rows.stream()
                .filter(row -> row.get("table").equals(table) && ReferenceFile.holdsIn(row, year))
                .findFirst()
                .map(row -> LocalDate.of(
                        year, Integer.parseInt(row.get("first_month")), Integer.parseInt(row.get("first_day"))))
                .orElse(LocalDate.of(year, 1, 1));
    }

    LocalDate last(String table, int year) {
        return first(table, year + 1).minusDays(1);
    }

    /** The year that a day lies in. */
    int year(String table, LocalDate day) {
        return day.isBefore(first(table, day.getYear())) ? day.getYear() - 1 : day.getYear();
    }
}
