package patinary.bringing;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What stands between the cells of a row. */
enum Delimiter {
    COMMA(','),
    SEMICOLON(';'),
    TAB('\t'),
    PIPE('|');

    private static final int SAMPLE = 30;

    private final char sign;

    Delimiter(char sign) {
        this.sign = sign;
    }

    char sign() {
        return sign;
    }

    public String messageKey() {
        return "bringing.delimiter." + name();
    }

    /**
     * The delimiter by which most of the first rows come out equally wide, and wide: the square of the share of rows of
     * the commonest width, times that width less one. Common practice, no source.
     */
    static Delimiter guess(String text) {
        Delimiter best = COMMA;
        double most = 0;
        for (Delimiter delimiter : values()) {
            double score = score(Sheet.read(text, delimiter, SAMPLE).rows());
            if (score > most) {
                most = score;
                best = delimiter;
            }
        }
        return best;
    }

    private static double score(List<Sheet.Row> rows) {
        if (rows.isEmpty()) {
            return 0;
        }
        Map<Integer, Integer> widths = new TreeMap<>();
        rows.forEach(row -> widths.merge(row.cells().size(), 1, Integer::sum));
        int most = Collections.max(widths.values());
        int width = widths.entrySet().stream()
                .filter(entry -> entry.getValue() == most)
                .mapToInt(Map.Entry::getKey)
                .max()
                .orElse(1);
        double share = most / (double) rows.size();
        return share * share * (width - 1);
    }
}
