package patinary.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import patinary.exchange.Content;
import patinary.history.Change.What;

/** What differs between two contents; all of them invented. */
class DifferencesTest {

    private static final Map<String, String> JUG = Map.of("line", "1", "title", "Enamel jug", "price", "20.00");
    private static final Map<String, String> TRAY = Map.of("line", "2", "title", "Tin tray", "price", "12.00");

    @Test
    void theSameDiffersInNothing() {
        assertThat(Differences.between(sale("Ann", JUG), sale("Ann", JUG))).isEmpty();
    }

    @Test
    void aCellOfTheDocument() {
        List<Differences.RowChange> found = Differences.between(sale("Ann", JUG), sale("Cleo", JUG));

        assertThat(found).hasSize(1);
        assertThat(found.get(0).table()).isEqualTo("sale");
        assertThat(found.get(0).what()).isEqualTo(What.CHANGED);
        assertThat(found.get(0).cells()).containsExactly(new Differences.Cell("buyer", "Ann", "Cleo"));
    }

    @Test
    void anEmptyCellIsATextWithoutALetter() {
        assertThat(Differences.between(sale("", JUG), sale("Ann", JUG)).get(0).cells())
                .containsExactly(new Differences.Cell("buyer", "", "Ann"));
    }

    @Test
    void aLineThatCameAndOneThatWent() {
        assertThat(Differences.between(sale("Ann", JUG), sale("Ann", JUG, TRAY)))
                .extracting(Differences.RowChange::table, Differences.RowChange::what)
                .containsExactly(tuple("sale_line", What.RECORDED));
        assertThat(Differences.between(sale("Ann", JUG, TRAY), sale("Ann", JUG)))
                .extracting(Differences.RowChange::table, Differences.RowChange::what)
                .containsExactly(tuple("sale_line", What.REMOVED));
    }

    @Test
    void takingOutTheFirstLineSaysNothingOfTheOthers() {
        Map<String, String> moved = with(TRAY, "line", "1");

        List<Differences.RowChange> found = Differences.between(sale("Ann", JUG, TRAY), sale("Ann", moved));

        assertThat(found).hasSize(1);
        assertThat(found.get(0).what()).isEqualTo(What.REMOVED);
        assertThat(found.get(0).row()).containsEntry("title", "Enamel jug");
    }

    @Test
    void aLineWithTheSameKeyIsTheSameLineChanged() {
        List<Differences.RowChange> found =
                Differences.between(sale("Ann", JUG, TRAY), sale("Ann", JUG, with(TRAY, "price", "10.00")));

        assertThat(found).hasSize(1);
        assertThat(found.get(0).what()).isEqualTo(What.CHANGED);
        assertThat(found.get(0).cells()).containsExactly(new Differences.Cell("price", "12.00", "10.00"));
        assertThat(found.get(0).row()).containsEntry("title", "Tin tray");
    }

    @Test
    void whatCameOrWentIsToldWhole() {
        assertThat(Differences.between(null, sale("Ann", JUG)))
                .extracting(Differences.RowChange::table, Differences.RowChange::what)
                .containsExactly(tuple("sale", What.RECORDED), tuple("sale_line", What.RECORDED));
        assertThat(Differences.between(sale("Ann", JUG), null))
                .extracting(Differences.RowChange::table, Differences.RowChange::what)
                .containsExactly(tuple("sale", What.REMOVED), tuple("sale_line", What.REMOVED));
    }

    @Test
    void whatThisVersionDoesNotKnowIsToldAllTheSame() {
        Content before = new Content(Map.of("of_another_version", List.of(Map.of("a", "1"))));

        assertThat(Differences.between(before, null).get(0).cells())
                .containsExactly(new Differences.Cell("a", "1", ""));
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        Content content = sale("Ann \"the\" O\\Invented, née Zoë", JUG, TRAY);

        assertThat(Content.of(content.text())).isEqualTo(content);
    }

    @SafeVarargs
    private static Content sale(String buyer, Map<String, String>... lines) {
        Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
        Map<String, String> sale = new LinkedHashMap<>(Map.of("id", "1", "date", "2026-05-03"));
        if (!buyer.isEmpty()) {
            sale.put("buyer", buyer);
        }
        tables.put("sale", List.of(sale));
        tables.put("sale_line", List.of(lines));
        return new Content(tables);
    }

    private static Map<String, String> with(Map<String, String> row, String column, String text) {
        Map<String, String> changed = new LinkedHashMap<>(row);
        changed.put(column, text);
        return changed;
    }
}
