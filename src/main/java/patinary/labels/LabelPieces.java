package patinary.labels;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.web.Words;

/** Finds pieces to print labels for. */
@Repository
class LabelPieces {

    /** As many as one page of ticks can be read through. */
    static final int MOST = 200;

    record Row(
            String code,
            String title,
            String place,
            String state,
            @Nullable LocalDate foundOn) {}

    private final JdbcClient jdbc;

    LabelPieces(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The newest first; without a state those still in her hands. Empty answers do not narrow. */
    List<Row> find(String words, String state, String place, @Nullable LocalDate since) {
        StringBuilder where =
                new StringBuilder(state.isEmpty() ? "where s.state not in ('SOLD', 'GONE')" : "where s.state = :state");
        Map<String, Object> values = new HashMap<>(Map.of("state", state, "place", place, "most", MOST));
        if (!words.isBlank()) {
            values.put("words", Words.anywhere(words));
            where.append(" and ").append(Words.in("p.code", "p.title"));
        }
        if (!place.isEmpty()) {
            where.append(" and p.place = :place");
        }
        if (since != null) {
            values.put("since", since);
            where.append(" and s.found_on >= :since");
        }
        return jdbc.sql("select p.code, p.title, p.place, s.state, s.found_on"
                        + " from piece p join piece_state s on s.piece_id = p.id " + where
                        + " order by s.found_on desc nulls last, p.code desc fetch first :most rows only")
                .params(values)
                .query(Row.class)
                .list();
    }
}
