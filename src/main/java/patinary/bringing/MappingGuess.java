package patinary.bringing;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What can be told of a file by looking at it. What can be read in two ways is left open for a person. */
final class MappingGuess {

    private static final int LOOKED_AT = 400;

    private MappingGuess() {}

    static Mapping of(byte[] bytes) {
        Encoding encoding = Encoding.guess(bytes).encoding();
        String text = encoding.text(bytes);
        Delimiter delimiter = Delimiter.guess(text);
        return of(encoding, delimiter, Sheet.read(text, delimiter));
    }

    static Mapping of(Encoding encoding, Delimiter delimiter, Sheet sheet) {
        int leadIn = leadIn(sheet);
        boolean header = isHeader(sheet, leadIn);
        Mapping open = new Mapping(encoding, delimiter, leadIn, header, null, null, false, true, null, Map.of());
        return forms(columns(open, sheet), sheet);
    }

    /** The same, with what the names of the columns propose. */
    static Mapping columns(Mapping mapping, Sheet sheet) {
        return new Mapping(
                mapping.encoding(),
                mapping.delimiter(),
                mapping.leadIn(),
                mapping.header(),
                mapping.dates(),
                mapping.numbers(),
                mapping.eachRow(),
                mapping.sent(),
                mapping.channel(),
                columns(mapping.head(sheet)));
    }

    /** Fills in the forms of dates and numbers where the chosen columns leave no doubt. */
    static Mapping forms(Mapping mapping, Sheet sheet) {
        return new Mapping(
                mapping.encoding(),
                mapping.delimiter(),
                mapping.leadIn(),
                mapping.header(),
                mapping.dates() == null ? onlyDateForm(dates(mapping, sheet)) : mapping.dates(),
                mapping.numbers() == null ? onlyNumberForm(numbers(mapping, sheet)) : mapping.numbers(),
                mapping.eachRow(),
                mapping.sent(),
                mapping.channel(),
                mapping.columns());
    }

    static List<String> dates(Mapping mapping, Sheet sheet) {
        return mapping.has(Meaning.DATE) ? texts(mapping, sheet, Set.of(Meaning.DATE)) : List.of();
    }

    static List<String> numbers(Mapping mapping, Sheet sheet) {
        Set<Meaning> amounts = new HashSet<>(mapping.columns().keySet());
        amounts.removeIf(meaning -> !meaning.isAmount() && meaning != Meaning.QUANTITY);
        return texts(mapping, sheet, amounts);
    }

    /** The form that most of the dates have, where no other has as many. */
    private static @Nullable DateForm onlyDateForm(List<String> texts) {
        DateForm best = null;
        long most = 0;
        boolean shared = false;
        for (DateForm form : DateForm.values()) {
            long fits =
                    texts.stream().filter(text -> form.read(text).isPresent()).count();
            shared = fits == most ? shared || fits > 0 : fits < most && shared;
            best = fits > most ? form : best;
            most = Math.max(most, fits);
        }
        return shared ? null : best;
    }

    private static @Nullable NumberForm onlyNumberForm(List<String> texts) {
        List<String> readable = texts.stream()
                .filter(text -> !NumberForm.fitting(List.of(text)).isEmpty())
                .toList();
        if (readable.isEmpty()) {
            return null;
        }
        List<NumberForm> fitting = NumberForm.fitting(readable);
        if (fitting.size() == 1) {
            return fitting.get(0);
        }
        return fitting.size() > 1 && !NumberForm.differ(readable) ? NumberForm.POINT : null;
    }

    private static List<String> texts(Mapping mapping, Sheet sheet, Set<Meaning> meanings) {
        return mapping.rows(sheet).stream()
                .limit(LOOKED_AT)
                .flatMap(row -> meanings.stream().map(meaning -> mapping.cell(row, meaning)))
                .filter(text -> !text.isEmpty())
                .distinct()
                .toList();
    }

    /** Rows above the table are those narrower than it: fewer than half of its cells are filled. */
    private static int leadIn(Sheet sheet) {
        int width = sheet.width();
        for (int i = 0; i < sheet.rows().size(); i++) {
            if (sheet.rows().get(i).filled() * 2 >= width) {
                return i;
            }
        }
        return 0;
    }

    /** A header has words in it, no word twice, and neither a date nor a number. */
    private static boolean isHeader(Sheet sheet, int leadIn) {
        if (sheet.rows().size() <= leadIn) {
            return false;
        }
        List<String> cells = sheet.rows().get(leadIn).cells().stream()
                .map(String::strip)
                .filter(cell -> !cell.isEmpty())
                .toList();
        return new HashSet<>(cells).size() == cells.size() && cells.stream().noneMatch(MappingGuess::isValue);
    }

    private static boolean isValue(String cell) {
        return !NumberForm.fitting(List.of(cell)).isEmpty()
                || !DateForm.fitting(List.of(cell)).isEmpty();
    }

    private static Map<Meaning, Integer> columns(List<String> head) {
        Map<Meaning, Integer> columns = new EnumMap<>(Meaning.class);
        List<String> plain = Meaning.plain(head);
        for (Meaning meaning : Meaning.values()) {
            meaning.proposed(plain)
                    .filter(column -> !columns.containsValue(column))
                    .ifPresent(column -> columns.put(meaning, column));
        }
        return columns;
    }
}
