package patinary.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TheirsTest {

    static class Row {
        public String title = "";
        public boolean exact;
    }

    static class Form {
        public String id = "";
        public long version;
        public String note = "";
        public List<String> pieces = new ArrayList<>();
        public List<Row> lines = new ArrayList<>();
        public Row first = new Row();
    }

    @Test
    void aFormIsReadByTheNamesOfItsControls() {
        Form form = form("a note", "Tin box");
        form.pieces.addAll(List.of("p1", "p2"));
        form.first.exact = true;

        assertThat(FormText.of(form))
                .containsEntry("note", List.of("a note"))
                .containsEntry("pieces", List.of("p1", "p2"))
                .containsEntry("lines[0].title", List.of("Tin box"))
                .containsEntry("lines[0].exact", List.of("false"))
                .containsEntry("first.exact", List.of("true"))
                .doesNotContainKeys("id", "version");
    }

    @Test
    void onlyWhatDiffersStandsBesideWhatIsTyped() {
        Form mine = form("mine\r\nin two lines", "Tin box");
        Form saved = form("mine\nin two lines ", "Tin box", "Crate");
        saved.first.exact = true;

        Theirs theirs = Theirs.between(FormText.of(mine), FormText.of(saved));

        assertThat(theirs.fields()).containsExactlyInAnyOrder("lines[1].title", "first.exact");
        assertThat(theirs.values("lines[1].title")).containsExactly("Crate");
        assertThat(theirs.differs("note")).isFalse();
    }

    @Test
    void aLineThatTheOtherTookAwayDiffersToo() {
        Theirs theirs = Theirs.between(FormText.of(form("", "Tin box", "Crate")), FormText.of(form("", "Tin box")));

        assertThat(theirs.fields()).containsExactly("lines[1].title");
        assertThat(theirs.values("lines[1].title")).containsExactly("");
    }

    @Test
    void aChosenAnswerIsCalledAsInItsList() {
        Theirs theirs = Theirs.between(FormText.of(form("a")), FormText.of(form("b")));

        assertThat(theirs.choice("b", List.of(Choice.named("a", "Alder"), Choice.named("b", "Birch"))))
                .isEqualTo(Choice.named("b", "Birch"));
        assertThat(theirs.choice("b", null)).isNull();
    }

    private static Form form(String note, String... titles) {
        Form form = new Form();
        form.note = note;
        for (String title : titles) {
            Row row = new Row();
            row.title = title;
            form.lines.add(row);
        }
        return form;
    }
}
