package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.util.List;

/** The file of who changed what and when. It names documents that are there no more, so nothing is looked up for it. */
final class HistoryTables {

    static final String NAME = "history";

    private static final int LONGEST = 100_000_000;

    static final List<ArchiveTable> ALL = List.of(table(NAME)
            .key("id")
            .key("act_id", "place")
            .id("id")
            .id("act_id")
            .column("place", Type.WHOLE)
            .aboveZero()
            .column("changed_at", Type.MOMENT)
            .text("who", 60)
            .words("came_by", "FORM", "PHONE", "FILE", "COMMAND", "UNDO")
            .text("file_name", 200)
            .name("kind", 40)
            .id("subject_id")
            .column("day", "doc_date", Type.DATE)
            .optional()
            .column("step_on", Type.DATE)
            .optional()
            .id("undoes")
            .optional()
            .name("content_before", LONGEST)
            .optional()
            .name("content_after", LONGEST)
            .optional()
            .done());

    private HistoryTables() {}
}
