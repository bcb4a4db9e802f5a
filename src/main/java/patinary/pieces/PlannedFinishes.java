package patinary.pieces;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.web.Choice;

/** The finishes a piece may wait for. */
@Repository
class PlannedFinishes {

    private record Row(UUID id, String name) {}

    private final JdbcClient jdbc;

    PlannedFinishes(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Choice> choices() {
        return jdbc
                .sql("select id, name from finish where not removed order by lower(name), id")
                .query(Row.class)
                .list()
                .stream()
                .map(row -> Choice.named(row.id().toString(), row.name()))
                .toList();
    }

    boolean isThere(UUID id) {
        return jdbc.sql("select count(*) from finish where id = ? and not removed")
                        .param(id)
                        .query(Long.class)
                        .single()
                > 0;
    }
}
