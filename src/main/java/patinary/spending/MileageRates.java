package patinary.spending;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The standard mileage rates that a tax office lets a business use in place of its real vehicle costs: dated data, not
 * code, in {@code db/reference/mileage-rates.csv}, each row with its source. A trip takes the rate of its own date,
 * never of the day it was written down. Not tax advice: whether the rate may be used is a question for a preparer.
 */
public final class MileageRates {

    private static final String RESOURCE = "/db/reference/mileage-rates.csv";

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private final List<MileageRate> rates;

    private MileageRates(List<MileageRate> rates) {
        this.rates = rates;
    }

    /**
     * The rates that came with the program.
     *
     * @throws IllegalStateException where the file is not there
     */
    public static MileageRates load() {
        try (InputStream in = MileageRates.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + RESOURCE);
            }
            return read(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static MileageRates read(Reader csv) throws IOException {
        try (CSVParser parser = CSVParser.parse(csv, FORMAT)) {
            return new MileageRates(parser.stream().map(MileageRates::rate).toList());
        }
    }

    /** The rate in force on a day, or empty where none is known; nothing is guessed from a year before. */
    public Optional<MileageRate> rateOn(LocalDate day, String jurisdiction) {
        return rates.stream()
                .filter(rate -> rate.jurisdiction().equals(jurisdiction) && rate.holdsOn(day))
                .findFirst();
    }

    /** Every known rate, in the order of the file. */
    public List<MileageRate> all() {
        return rates;
    }

    private static MileageRate rate(CSVRecord row) {
        return new MileageRate(
                row.get("jurisdiction"),
                LocalDate.parse(row.get("from")),
                LocalDate.parse(row.get("to")),
                new BigDecimal(row.get("tenths_of_a_cent_per_unit")),
                row.get("unit"),
                row.get("source"),
                row.get("status"));
    }
}
