package patinary.taxyear;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The dated tax tables that came with the program: {@code db/reference/tax-lines.csv} and {@code tax-map.csv}. Lines are
 * data because their numbers move from year to year.
 */
final class TaxTables {

    /** The table without a form behind it, which holds for every year. */
    static final String PLAIN = "plain";

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private final List<CSVRecord> lines;
    private final List<CSVRecord> map;

    private TaxTables(List<CSVRecord> lines, List<CSVRecord> map) {
        this.lines = lines;
        this.map = map;
    }

    /** @throws IllegalStateException where a file is not there */
    static TaxTables load() {
        return new TaxTables(read("/db/reference/tax-lines.csv"), read("/db/reference/tax-map.csv"));
    }

    /** The table for a year; without lines where its form is not known for that year. Nothing is carried over here. */
    TaxTable table(String name, int year) {
        List<TaxLine> own = lines.stream()
                .filter(row -> row.get("table").equals(name) && holds(row, year))
                .map(row -> new TaxLine(
                        row.get("meaning"),
                        row.get("line"),
                        row.get("title"),
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

    private static boolean holds(CSVRecord row, int year) {
        String from = row.get("year_from");
        String to = row.get("year_to");
        return (from.isEmpty() || Integer.parseInt(from) <= year) && (to.isEmpty() || year <= Integer.parseInt(to));
    }

    private static List<CSVRecord> read(String resource) {
        try (InputStream in = TaxTables.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("The program was packed without " + resource);
            }
            try (CSVParser parser = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
                return parser.getRecords();
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
