package patinary.bench;

import java.io.IOException;
import java.io.Reader;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import patinary.web.Worded;

/**
 * Finds the cautions that words call up: the names of supplies, what was done, what a piece is made of. {@link TriggerWords}
 * says how words are found.
 */
public final class Cautions {

    private record Rule(Caution caution, TriggerWords words) {}

    private final List<Rule> rules;

    private Cautions(List<Rule> rules) {
        this.rules = rules;
    }

    /**
     * Reads the table of cautions: UTF-8, RFC 4180, with a header.
     *
     * @throws IOException where it cannot be read
     * @throws IllegalArgumentException where a row has an unknown severity or a column is missing
     */
    public static Cautions read(Reader table) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var parser = format.parse(table)) {
            return new Cautions(parser.stream()
                    .map(row -> new Rule(caution(row), TriggerWords.of(TriggerWords.inEveryLanguage(row::get))))
                    .toList());
        }
    }

    /** The cautions that any of these texts calls up, the most serious first, else in the order of the table. */
    public List<Caution> about(Collection<String> texts) {
        return rules.stream()
                .filter(rule -> rule.words().in(texts))
                .map(Rule::caution)
                .sorted(Comparator.comparing(Caution::severity))
                .toList();
    }

    /** All of them, in the order of the table. */
    List<Caution> all() {
        return rules.stream().map(Rule::caution).toList();
    }

    private static Caution caution(CSVRecord row) {
        return new Caution(
                row.get("id"),
                Caution.Severity.valueOf(row.get("severity")),
                TriggerWords.split(TriggerWords.inEveryLanguage(row::get)),
                Worded.of(row::get, "text"),
                row.get("source"));
    }
}
