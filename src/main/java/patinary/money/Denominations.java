package patinary.money;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import patinary.reference.ReferenceFile;

/**
 * The notes and coins of each currency that people pay with. Dated data, in {@code db/reference/denominations.csv}; a
 * currency that is not in the file has none, and its cash is counted as one total.
 */
public final class Denominations {

    /** What a denomination is made of. */
    public enum Kind {
        NOTE,
        COIN
    }

    /**
     * One note or coin.
     *
     * @param value in minor units, above zero
     */
    public record Denomination(Amount value, Kind kind) {}

    private record Dated(String currency, LocalDate from, LocalDate to, Denomination denomination) {

        boolean holds(String code, LocalDate day) {
            return currency.equals(code) && !day.isBefore(from) && !day.isAfter(to);
        }
    }

    private final List<Dated> rows;

    private Denominations(List<Dated> rows) {
        this.rows = rows;
    }

    /**
     * Those that came with the program.
     *
     * @throws IllegalStateException where the file is not there
     */
    public static Denominations load() {
        return new Denominations(ReferenceFile.rows("denominations").stream()
                .map(Denominations::dated)
                .toList());
    }

    /** Everything in use on a day, the largest first. */
    public List<Denomination> on(LocalDate day, ShopCurrency currency) {
        return rows.stream()
                .filter(row -> row.holds(currency.code(), day))
                .map(Dated::denomination)
                .sorted(Comparator.comparing(Denomination::value).reversed().thenComparing(Denomination::kind))
                .toList();
    }

    private static Dated dated(CSVRecord row) {
        return new Dated(
                row.get("currency"),
                LocalDate.parse(row.get("from")),
                LocalDate.parse(row.get("to")),
                new Denomination(Amount.of(Long.parseLong(row.get("minor"))), Kind.valueOf(row.get("kind"))));
    }
}
