package patinary.bench;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.web.Words;

/** The pieces that may be worked on. */
@Repository
class WorkedPieces {

    /** More than fit under a thumb are found by their words. */
    private static final int OFFERED = 24;

    private static final UUID NOBODY = new UUID(0, 0);

    private static final String FIELDS = """
            select p.id, p.code, p.title, p.material, k.name as kind, coalesce(p.area_cm2, k.area_cm2) as area,
                   p.planned_finish_id as finish_id, s.state
            from piece p
            join piece_state s on s.piece_id = p.id
            left join object_kind k on k.id = p.kind_id
            """;

    private final JdbcClient jdbc;

    WorkedPieces(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<WorkedPiece> withIds(Collection<UUID> ids) {
        if (ids.isEmpty()) {
            return List.of();
        }
        return jdbc.sql(FIELDS + " where p.id in (:ids) order by p.code")
                .param("ids", List.copyOf(ids))
                .query(WorkedPiece.class)
                .list();
    }

    /** Pieces found, on the bench or ready, the latest first; by words also those on offer. Without the chosen ones. */
    List<WorkedPiece> offered(String words, Collection<UUID> chosen) {
        String states = words.isBlank() ? "('FOUND', 'BENCH', 'READY')" : "('FOUND', 'BENCH', 'READY', 'OFFERED')";
        return jdbc.sql(FIELDS + " where s.state in " + states + """
                         and %s
                         and p.id not in (:chosen)
                        order by coalesce(s.since, date '1970-01-01') desc, p.code desc
                        fetch first :most rows only
                        """.formatted(Words.in("p.code", "p.title")))
                .param("words", Words.anywhere(words))
                .param("chosen", chosen.isEmpty() ? List.of(NOBODY) : List.copyOf(chosen))
                .param("most", OFFERED)
                .query(WorkedPiece.class)
                .list();
    }
}
