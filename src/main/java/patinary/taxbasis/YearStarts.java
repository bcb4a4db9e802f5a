package patinary.taxbasis;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * On which day a tax year begins, by tax table: {@code db/reference/tax-years.csv}. A year bears the number of the calendar
 * year in which it begins.
 */
final class YearStarts {

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    private static final String RESOURCE = "/db/reference/tax-years.csv";

    private final List<CSVRecord> rows;

    private YearStarts(List<CSVRecord> rows) {
        this.rows = rows;
    }

    /** @throws IllegalStateException where the file is not there */
    static YearStarts load() {
        try (InputStream in = YearStarts.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + RESOURCE);
            }
            try (CSVParser parser = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
                return new YearStarts(parser.getRecords());
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The first day of a year; 1 January where the file has no row for the table and year. */
    LocalDate first(String table, int year) {
        return rows.stream()
                .filter(row -> row.get("table").equals(table) && holds(row, year))
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

    private static boolean holds(CSVRecord row, int year) {
        String from = row.get("year_from");
        String to = row.get("year_to");
        return (from.isEmpty() || Integer.parseInt(from) <= year) && (to.isEmpty() || year <= Integer.parseInt(to));
    }
}
