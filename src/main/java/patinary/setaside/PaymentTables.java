package patinary.setaside;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.reference.ReferenceFile;

/**
 * The payments of a tax year and the constants of self-employment tax: dated data in {@code db/reference/tax-payments.csv} and
 * {@code self-employment.csv}. A year without rows has no estimate; nothing is carried over from another year.
 */
final class PaymentTables {

    /** Where a constant of a year comes from. */
    record Source(String kind, String source, String status) {}

    private final List<CSVRecord> payments;
    private final List<CSVRecord> constants;

    private PaymentTables(List<CSVRecord> payments, List<CSVRecord> constants) {
        this.payments = payments;
        this.constants = constants;
    }

    /** @throws IllegalStateException where a file is not there */
    static PaymentTables load() {
        return new PaymentTables(ReferenceFile.rows("tax-payments"), ReferenceFile.rows("self-employment"));
    }

    /** The payments of a year in order; none where they are not known. */
    List<Instalment> instalments(String jurisdiction, int year) {
        return payments.stream()
                .filter(row -> row.get("jurisdiction").equals(jurisdiction)
                        && row.get("tax_year").equals(String.valueOf(year)))
                .map(row -> new Instalment(
                        Integer.parseInt(row.get("payment")),
                        LocalDate.parse(row.get("period_to")),
                        new BigDecimal(row.get("factor")),
                        percent(row.get("share_percent")),
                        LocalDate.parse(row.get("due")),
                        row.get("why_later"),
                        row.get("source"),
                        row.get("status")))
                .toList();
    }

    /** The constants of a year, or empty where one of them is not known. */
    Optional<Contributions> contributions(String jurisdiction, int year, int digits) {
        List<CSVRecord> own = of(jurisdiction, year);
        if (own.size() < 5) {
            return Optional.empty();
        }
        return Optional.of(new Contributions(
                percent(value(own, "net_share")),
                percent(value(own, "social_security")),
                percent(value(own, "medicare")),
                Amount.of(Long.parseLong(value(own, "floor"))),
                Amount.of(Long.parseLong(value(own, "wage_base"))),
                digits));
    }

    List<Source> sources(String jurisdiction, int year) {
        return of(jurisdiction, year).stream()
                .map(row -> new Source(row.get("kind"), row.get("source"), row.get("status")))
                .toList();
    }

    private List<CSVRecord> of(String jurisdiction, int year) {
        return constants.stream()
                .filter(row -> row.get("jurisdiction").equals(jurisdiction) && ReferenceFile.holdsIn(row, year))
                .toList();
    }

    private static String value(List<CSVRecord> rows, String kind) {
        return rows.stream()
                .filter(row -> row.get("kind").equals(kind))
                .map(row -> row.get("value"))
                .findFirst()
                .orElseThrow();
    }

    private static Percent percent(String text) {
        return new Percent(new BigDecimal(text));
    }
}
