package patinary.buyers;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Files of sales that wait to be brought in: the only place where a name stands that is not yet in the books. */
@Repository("waitingFiles")
@Transactional
class Drafts {

    /** Ways in which such files are written. */
    private static final List<Charset> WAYS = List.of(
            StandardCharsets.UTF_8,
            Charset.forName("windows-1252"),
            StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE);

    private final JdbcClient jdbc;

    Drafts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The files in which a name stands. */
    @Transactional(readOnly = true)
    List<UUID> naming(NameInText name) {
        Map<UUID, ByteArrayOutputStream> files = new LinkedHashMap<>();
        jdbc.sql("select draft_id, content from sales_draft_part order by draft_id, part")
                .query(row -> {
                    byte[] part = row.getBytes("content");
                    files.computeIfAbsent(row.getObject("draft_id", UUID.class), id -> new ByteArrayOutputStream())
                            .write(part, 0, part.length);
                });
        List<UUID> found = new ArrayList<>();
        files.forEach((id, bytes) -> {
            if (WAYS.stream().anyMatch(way -> name.isIn(bytes.toString(way)))) {
                found.add(id);
            }
        });
        return found;
    }

    /** Throws files away; nothing of them is in the books. */
    void throwAway(List<UUID> files) {
        for (String table : List.of("sales_draft_row", "sales_draft_part", "sales_draft_column")) {
            files.forEach(id -> jdbc.sql("delete from " + table + " where draft_id = ?")
                    .param(id)
                    .update());
        }
        files.forEach(
                id -> jdbc.sql("delete from sales_draft where id = ?").param(id).update());
    }
}
