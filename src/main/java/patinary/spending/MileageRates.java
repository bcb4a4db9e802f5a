package patinary.spending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import patinary.reference.ReferenceFile;

/**
 * The standard mileage rates that a tax office lets a business use in place of its real vehicle costs: dated data, not
 * code, in {@code db/reference/mileage-rates.csv}, each row with its source. A trip takes the rate of its own date,
 * never of the day it was written down. Not tax advice: whether the rate may be used is a question for a preparer.
 */
public final class MileageRates {

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
        return new MileageRates(ReferenceFile.rows("mileage-rates").stream()
                .map(MileageRates::rate)
                .toList());
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
