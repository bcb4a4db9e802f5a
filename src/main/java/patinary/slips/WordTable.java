package patinary.slips;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the reading program's table of words: tab-separated, twelve columns, words at level 5. */
final class WordTable {

    static final int MOST_WORDS = 4_000;
    private static final int LONGEST_WORD = 80;

    private WordTable() {}

    /** Rows that are not words, or that cannot be read, are passed over. */
    static List<SlipLine> read(String table) {
        Map<String, List<SlipWord>> lines = new LinkedHashMap<>();
        table.lines().limit(MOST_WORDS).forEach(row -> {
            String[] cells = row.split("\t", 12);
            if (cells.length == 12 && cells[0].equals("5") && !cells[11].isBlank()) {
                add(lines, cells);
            }
        });
        return lines.values().stream().map(SlipLine::new).toList();
    }

    private static void add(Map<String, List<SlipWord>> lines, String[] cells) {
        try {
            String text = cells[11].strip();
            SlipWord word = new SlipWord(
                    Integer.parseInt(cells[6]),
                    Integer.parseInt(cells[7]),
                    Integer.parseInt(cells[8]),
                    Integer.parseInt(cells[9]),
                    Double.parseDouble(cells[10]),
                    text.substring(0, Math.min(text.length(), LONGEST_WORD)));
            String line = String.join(".", cells[1], cells[2], cells[3], cells[4]);
            lines.computeIfAbsent(line, key -> new ArrayList<>()).add(word);
        } catch (NumberFormatException unreadable) {
            // A row that is cut off or garbled carries no word.
        }
    }
}
