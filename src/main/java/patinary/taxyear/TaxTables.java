package patinary.taxyear;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import patinary.reference.ReferenceFile;
import patinary.web.Worded;

/**
 * The dated tax tables that came with the program: {@code db/reference/tax-lines.csv} and {@code tax-map.csv}. Lines are
 * data because their numbers move from year to year.
 */
final class TaxTables {

    /** The table without a form behind it, which holds for every year. */
    static final String PLAIN = "plain";

    private final List<CSVRecord> lines;
    private final List<CSVRecord> map;

    private TaxTables(List<CSVRecord> lines, List<CSVRecord> map) {
        this.lines = lines;
        this.map = map;
    }

    /** @throws IllegalStateException where a file is not there */
    static TaxTables load() {
        return new TaxTables(ReferenceFile.rows("tax-lines"), ReferenceFile.rows("tax-map"));
    }

    /** The table for a year; without lines where its form is not known for that year. Nothing is carried over here. */
    TaxTable table(String name, int year) {
        List<TaxLine> own = lines.stream()
                .filter(row -> row.get("table").equals(name) && ReferenceFile.holdsIn(row, year))
                .map(row -> new TaxLine(
                        row.get("meaning"),
                        row.get("line"),
                        row.get("title"),
                        Worded.of(row::get, "title"),
                        row.get("part"),
                        row.get("source"),
                        row.get("status")))
                // A line that only some years have stands in its place among the others, wherever its row is.
                .sorted(TaxLine.BY_NUMBER)
                .toList();
        Map<String, String> meanings = map.stream()
                .filter(row -> row.get("table").equals(name))
                .collect(Collectors.toMap(
                        row -> TaxTable.key(row.get("account"), row.get("category")), row -> row.get("meaning")));
        return new TaxTable(name, own, meanings);
    }
}
