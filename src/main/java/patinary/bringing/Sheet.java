package patinary.bringing;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file cut into rows and cells, as RFC 4180 has it, and forgiving: what stands behind a closed quote is kept, and a quote
 * that is never closed ends with the file. A row that such a quote has swallowed shows by its number of cells.
 *
 * @param rows what is not empty, in the file's order
 * @param longer whether there were more rows than the limit lets in
 * @param broken whether the file could not be read to its end
 */
record Sheet(List<Row> rows, boolean longer, boolean broken) {

    /** So many rows, columns and letters of a cell are read, and no more. */
    static final int MOST_ROWS = 5000;

    static final int MOST_COLUMNS = 100;
    static final int LONGEST_CELL = 2000;

    private static final int UNREADABLE = 0xFFFD;

    /**
     * One row.
     *
     * @param number its place among the rows, from 1
     * @param line the line of the file on which it begins, from 1
     */
    record Row(int number, long line, List<String> cells) {

        /** A cell without the spaces around it; empty where the row is too short. */
        public String cell(int column) {
            return column >= 0 && column < cells.size() ? cells.get(column).strip() : "";
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }

        long filled() {
            return cells.stream().filter(cell -> !cell.isBlank()).count();
        }
    }

    static Sheet read(String text, Delimiter delimiter) {
        return read(text, delimiter, MOST_ROWS);
    }

    static Sheet read(String text, Delimiter delimiter, int most) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter.sign())
                .setIgnoreEmptyLines(true)
                .setLenientEof(true)
                .setTrailingData(true)
                .get();
        List<Row> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            boolean longer = fill(rows, parser, most);
            return new Sheet(List.copyOf(rows), longer, false);
        } catch (IOException | UncheckedIOException | IllegalStateException unreadable) {
            return new Sheet(List.copyOf(rows), false, true);
        }
    }

    /** The commonest number of cells; the larger of two that are equally common. */
    int width() {
        Map<Integer, Integer> widths = new TreeMap<>(Collections.reverseOrder());
        rows.forEach(row -> widths.merge(row.cells().size(), 1, Integer::sum));
        return widths.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    private static boolean fill(List<Row> rows, CSVParser parser, int most) {
        long line = 1;
        Iterator<CSVRecord> records = parser.iterator();
        while (records.hasNext()) {
            List<String> cells = cells(records.next());
            Row row = new Row(rows.size() + 1, line, cells);
            line = parser.getCurrentLineNumber() + 1;
            if (!row.isBlank()) {
                if (rows.size() == most) {
                    return true;
                }
                rows.add(row);
            }
        }
        return false;
    }

    private static List<String> cells(CSVRecord row) {
        return row.stream().limit(MOST_COLUMNS).map(Sheet::cut).toList();
    }

    /** Letters that no text column takes, such as a zero byte or half a pair of surrogates, become U+FFFD. */
    private static String cut(String cell) {
        String plain = cell.length() > LONGEST_CELL ? cell.substring(0, LONGEST_CELL) : cell;
        return plain.codePoints().noneMatch(Sheet::isNoLetter)
                ? plain
                : plain.codePoints()
                        .map(letter -> isNoLetter(letter) ? UNREADABLE : letter)
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString();
    }

    private static boolean isNoLetter(int letter) {
        boolean control = letter < ' ' && letter != '\n' && letter != '\r' && letter != '\t';
        return control || letter >= Character.MIN_SURROGATE && letter <= Character.MAX_SURROGATE;
    }
}
