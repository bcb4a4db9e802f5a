package patinary.bringing;

import java.io.ByteArrayOutputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Files that are being worked on. They stand in the database, under an id of their own; their names are only shown. */
@Repository
@Transactional
class Drafts {

    /** So large a file may be, and so many may wait. */
    static final int LARGEST = 4_000_000;

    static final int MOST = 20;

    private static final int PART = 500_000;

    /** A file in the list. */
    record Row(UUID id, String fileName, Instant uploadedAt) {}

    /** A file with what she has said of it so far. */
    record Draft(UUID id, String fileName, byte[] content, Mapping mapping) {

        Sheet sheet() {
            return Sheet.read(mapping.encoding().text(content), mapping.delimiter());
        }
    }

    private final JdbcClient jdbc;
    private final MappingRows mappings;
    private final Clock clock;

    Drafts(JdbcClient jdbc, MappingRows mappings, Clock clock) {
        this.jdbc = jdbc;
        this.mappings = mappings;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    public List<Row> all() {
        return jdbc.sql("select id, file_name, uploaded_at from sales_draft order by uploaded_at desc, id")
                .query((row, number) -> new Row(
                        row.getObject("id", UUID.class),
                        row.getString("file_name"),
                        row.getObject("uploaded_at", OffsetDateTime.class).toInstant()))
                .list();
    }

    public UUID add(String fileName, byte[] content, Mapping mapping) {
        UUID id = UUID.randomUUID();
        OffsetDateTime now = clock.instant().atOffset(ZoneOffset.UTC);
        mappings.insert("sales_draft", "file_name, uploaded_at", id, mapping, List.of(fileName, now));
        for (int part = 0; part * PART < content.length; part++) {
            byte[] bytes = Arrays.copyOfRange(content, part * PART, Math.min(content.length, (part + 1) * PART));
            jdbc.sql("insert into sales_draft_part (draft_id, part, content) values (?, ?, ?)")
                    .params(id, part, bytes)
                    .update();
        }
        return id;
    }

    @Transactional(readOnly = true)
    public Optional<Draft> find(UUID id) {
        return jdbc.sql("select * from sales_draft where id = ?")
                .param(id)
                .query((row, number) -> new Draft(
                        id,
                        row.getString("file_name"),
                        content(id),
                        MappingRows.read(row, mappings.columns("draft", id))))
                .optional();
    }

    /** Takes the draft for the rest of the transaction; false where it is gone. */
    public boolean hold(UUID id) {
        return jdbc.sql("update sales_draft set file_name = file_name where id = ?")
                        .param(id)
                        .update()
                == 1;
    }

    /** Keeps what she says of a file. Where its rows are cut in another way, what she said of them before is gone. */
    public void keep(Draft draft, Mapping mapping) {
        if (hold(draft.id())) {
            mappings.update("sales_draft", draft.id(), mapping);
            Mapping before = draft.mapping();
            if (before.encoding() != mapping.encoding() || before.delimiter() != mapping.delimiter()) {
                jdbc.sql("delete from sales_draft_row where draft_id = ?")
                        .param(draft.id())
                        .update();
            }
        }
    }

    public void remove(UUID id) {
        jdbc.sql("delete from sales_draft where id = ?").param(id).update();
    }

    @Transactional(readOnly = true)
    public Map<Integer, RowChoice> choices(UUID id) {
        Map<Integer, RowChoice> choices = new HashMap<>();
        jdbc.sql("select row_number, what, codes, supply, content from sales_draft_row where draft_id = ?")
                .param(id)
                .query(row -> {
                    choices.put(
                            row.getInt("row_number"),
                            new RowChoice(
                                    RowChoice.What.valueOf(row.getString("what")),
                                    row.getString("codes"),
                                    row.getString("supply"),
                                    row.getString("content")));
                });
        return choices;
    }

    /** Keeps what she says of rows; nothing takes back what was said before. */
    public void choose(UUID id, Map<Integer, Optional<RowChoice>> choices) {
        if (!hold(id)) {
            return;
        }
        choices.forEach((row, choice) -> {
            jdbc.sql("delete from sales_draft_row where draft_id = ? and row_number = ?")
                    .params(id, row)
                    .update();
            choice.ifPresent(chosen -> jdbc.sql("insert into sales_draft_row "
                            + "(draft_id, row_number, what, codes, supply, content) values (?, ?, ?, ?, ?, ?)")
                    .params(id, row, chosen.what().name(), chosen.codes(), chosen.supply(), chosen.content())
                    .update());
        });
    }

    private byte[] content(UUID id) {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        jdbc.sql("select content from sales_draft_part where draft_id = ? order by part")
                .param(id)
                .query((row, number) -> row.getBytes("content"))
                .list()
                .forEach(content::writeBytes);
        return content.toByteArray();
    }
}
