package patinary.homeuse;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import patinary.reference.ReferenceFile;

/** What the simplified way allows, year by year: dated data in {@code db/reference/home-use.csv}. */
final class HomeRates {

    private final List<CSVRecord> rows;

    private HomeRates(List<CSVRecord> rows) {
        this.rows = rows;
    }

    /** @throws IllegalStateException where the file is not there */
    static HomeRates load() {
        return new HomeRates(ReferenceFile.rows("home-use"));
    }

    /** The rate of a year, or empty where none is known; nothing is carried over from another year. */
    Optional<HomeRate> of(String jurisdiction, int year) {
        return rows.stream()
                .filter(row -> row.get("jurisdiction").equals(jurisdiction) && ReferenceFile.holdsIn(row, year))
                .map(row -> new HomeRate(
                        Long.parseLong(row.get("minor_per_square_foot")),
                        new BigDecimal(row.get("most_square_feet")),
                        row.get("source"),
                        row.get("status")))
                .findFirst();
    }
}
