package patinary.bringing;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How a file is to be read.
 *
 * @param leadIn how many rows stand above the table
 * @param header whether the first row of the table names the columns
 * @param dates the form of the dates, or null where she has not said
 * @param numbers the form of the numbers, or null where she has not said
 * @param eachRow whether what is said of an order is its row's part, to be added up; otherwise it is written once
 * @param sent whether the sales were sent on their day
 * @param channel where the sales were made, or null where she has not said
 * @param columns the column of each meaning, from 0; those that are missing are not in the file
 */
record Mapping(
        Encoding encoding,
        Delimiter delimiter,
        int leadIn,
        boolean header,
        @Nullable DateForm dates,
        @Nullable NumberForm numbers,
        boolean eachRow,
        boolean sent,
        @Nullable UUID channel,
        Map<Meaning, Integer> columns) {

    Mapping {
        columns = columns.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(columns));
    }

    boolean has(Meaning meaning) {
        return columns.containsKey(meaning);
    }

    /** The cell of a meaning; empty where the file has no such column. */
    String cell(Sheet.Row row, Meaning meaning) {
        return row.cell(columns.getOrDefault(meaning, -1));
    }

    List<Sheet.Row> rows(Sheet sheet) {
        return sheet.rows().stream().skip(leadIn + (header ? 1L : 0)).toList();
    }

    /** The names of the columns; empty where the table has none. */
    List<String> head(Sheet sheet) {
        return header && sheet.rows().size() > leadIn
                ? sheet.rows().get(leadIn).cells().stream().map(String::strip).toList()
                : List.of();
    }

    /** The same settings for a file whose text is cut in another way. */
    Mapping cutAs(Mapping other) {
        return new Mapping(
                other.encoding, other.delimiter, other.leadIn, header, dates, numbers, eachRow, sent, channel, columns);
    }

    /** Whether the file's rows and columns come out the same by both. */
    boolean cutsAs(Mapping other) {
        return encoding == other.encoding
                && delimiter == other.delimiter
                && leadIn == other.leadIn
                && header == other.header;
    }

    /** Whether all is said that has to be said. */
    boolean isReady() {
        return dates != null
                && numbers != null
                && channel != null
                && has(Meaning.DATE)
                && (has(Meaning.PRICE) || has(Meaning.LINE_TOTAL));
    }

    /** What a header row is known by: the hash of its names, whatever their case. Empty where there is none. */
    static String key(List<String> head) {
        if (head.stream().allMatch(String::isBlank)) {
            return "";
        }
        String plain =
                head.stream().map(name -> name.strip().toLowerCase(Locale.ROOT)).collect(Collectors.joining("\u001F"));
        return hash(plain);
    }

    static String hash(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }
}
