package patinary.listing;

import java.io.IOException;
import java.io.Reader;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import patinary.bench.TriggerWords;
import patinary.web.Worded;

/** The lines of care that come with the program: db/reference/care-lines.csv. */
final class CareLines {

    private final List<CareLine> lines;

    private CareLines(List<CareLine> lines) {
        this.lines = lines;
    }

    /**
     * Reads the table: UTF-8, RFC 4180, with a header.
     *
     * @throws IOException where it cannot be read
     */
    static CareLines read(Reader table) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = format.parse(table)) {
            return new CareLines(parser.stream().map(CareLines::line).toList());
        }
    }

    /** Those that are said on a day, in the order of the table. */
    List<CareLine> on(LocalDate day) {
        return lines.stream()
                .filter(line -> !day.isBefore(line.from()) && (line.to() == null || !day.isAfter(line.to())))
                .toList();
    }

    /** Those that are said of something on a day; see {@link CareLine#isSaid}. */
    List<CareLine> of(LocalDate day, Collection<String> texts, Collection<String> cautions) {
        return lines.stream().filter(line -> line.isSaid(day, texts, cautions)).toList();
    }

    private static CareLine line(CSVRecord row) {
        String to = row.get("to");
        return new CareLine(
                row.get("id"),
                LocalDate.parse(row.get("from")),
                to.isEmpty() ? null : LocalDate.parse(to),
                row.get("always").equals("yes"),
                ids(row.get("cautions")),
                TriggerWords.of(TriggerWords.inEveryLanguage(row::get)),
                Worded.of(row::get, "text"),
                row.get("source"));
    }

    private static Set<String> ids(String cell) {
        return Arrays.stream(cell.split(";"))
                .map(String::strip)
                .filter(id -> !id.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }
}
