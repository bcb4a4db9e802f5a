package patinary.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One of the files in {@code db/reference}: rates, forms and lists, each row with its source. */
public final class ReferenceFile {

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private ReferenceFile() {}

    /**
     * All rows in the order of the file.
     *
     * @param name the file's name without its ending, as in {@code tax-lines}
     * @throws IllegalStateException where the program was packed without the file
     */
    public static List<CSVRecord> rows(String name) {
        String resource = "/db/reference/" + name + ".csv";
        try (InputStream in = ReferenceFile.class.getResourceAsStream(resource)) {
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

    /** Whether a row holds for a year, by its columns {@code year_from} and {@code year_to}; an empty one sets no bound. */
    public static boolean holdsIn(CSVRecord row, int year) {
        String from = row.get("year_from");
        String to = row.get("year_to");
        return (from.isEmpty() || Integer.parseInt(from) <= year) && (to.isEmpty() || year <= Integer.parseInt(to));
    }
}
