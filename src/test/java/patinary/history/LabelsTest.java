package patinary.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import patinary.exchange.KeptRows;

/** Whatever can be in the history has words; what a later version adds must get its own. */
class LabelsTest {

    @Test
    void everyTableAndColumnHasItsWords() throws IOException {
        Set<String> known = words().stringPropertyNames();
        Set<String> missing = new TreeSet<>();
        for (String root : KeptRows.tables()) {
            need(known, missing, "history.kind." + root);
            Stream.concat(Stream.of(root), KeptRows.members(root).stream()).forEach(table -> {
                if (!KeptRows.tables().contains(table)) {
                    need(known, missing, "history.rows." + table);
                }
                KeptRows.columns(table).forEach(column -> need(known, missing, "history.field." + column));
            });
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void everyRoadAndOutcomeAndRefusalHasItsWords() throws IOException {
        Set<String> known = words().stringPropertyNames();
        Set<String> missing = new TreeSet<>();
        for (CameBy road : CameBy.values()) {
            need(known, missing, "history.by." + road.name().toLowerCase(java.util.Locale.ROOT));
        }
        for (Change.What what : Change.What.values()) {
            need(known, missing, "history.what." + what.name().toLowerCase(java.util.Locale.ROOT));
            need(known, missing, "history.line." + what.name().toLowerCase(java.util.Locale.ROOT));
        }
        for (CannotUndo.Reason reason : CannotUndo.Reason.values()) {
            need(known, missing, reason.messageKey());
        }
        assertThat(missing).isEmpty();
    }

    private static void need(Set<String> known, Set<String> missing, String key) {
        if (!known.contains(key)) {
            missing.add(key);
        }
    }

    private static Properties words() throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(Path.of("src/main/resources/messages/history.properties"))) {
            words.load(reader);
        }
        return words;
    }
}
