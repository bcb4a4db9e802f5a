package patinary.homeuse;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What the simplified way allows, year by year: dated data in {@code db/reference/home-use.csv}. */
final class HomeRates {

    private static final String RESOURCE = "/db/reference/home-use.csv";

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private final List<CSVRecord> rows;

    private HomeRates(List<CSVRecord> rows) {
        this.rows = rows;
    }

    /** @throws IllegalStateException where the file is not there */
    static HomeRates load() {
        try (InputStream in = HomeRates.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + RESOURCE);
            }
            try (CSVParser parser = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
                return new HomeRates(parser.getRecords());
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The rate of a year, or empty where none is known; nothing is carried over from another year. */
    Optional<HomeRate> of(String jurisdiction, int year) {
        return rows.stream()
                .filter(row -> row.get("jurisdiction").equals(jurisdiction)
                        && Integer.parseInt(row.get("year_from")) <= year
                        && year <= Integer.parseInt(row.get("year_to")))
                .map(row -> new HomeRate(
                        Long.parseLong(row.get("minor_per_square_foot")),
                        new BigDecimal(row.get("most_square_feet")),
                        row.get("source"),
                        row.get("status")))
                .findFirst();
    }
}
