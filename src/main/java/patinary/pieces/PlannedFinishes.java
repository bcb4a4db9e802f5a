package patinary.pieces;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
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

    /** The name of the finish that a piece waits for. */
    Optional<String> planned(UUID piece) {
        return jdbc.sql("select f.name from piece p join finish f on f.id = p.planned_finish_id where p.id = ?")
                .param(piece)
                .query(String.class)
                .optional();
    }

    /** The usual surface of the kind of a piece, in square centimetres. */
    Optional<BigDecimal> usualArea(UUID piece) {
        return jdbc.sql("""
                        select k.area_cm2 from piece p join object_kind k on k.id = p.kind_id
                        where p.id = ? and k.area_cm2 is not null
                        """).param(piece).query(BigDecimal.class).optional();
    }

    boolean isThere(UUID id) {
        return jdbc.sql("select count(*) from finish where id = ? and not removed")
                        .param(id)
                        .query(Long.class)
                        .single()
                > 0;
    }
}
