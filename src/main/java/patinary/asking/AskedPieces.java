package patinary.asking;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.Answers;

/** Finds the pieces for which a price is sought by the codes on their labels. */
@Repository
@Transactional(readOnly = true)
class AskedPieces {

    /** More than anybody sells as one. */
    private static final int MOST = 60;

    private static final String PIECES = """
            select p.id, p.code, p.title, s.state, p.kind_id, k.name as kind, p.style_id, st.name as style
            from piece_state s
            left join piece p on p.id = s.piece_id
            left join object_kind k on k.id = p.kind_id
            left join style st on st.id = p.style_id
            where upper(p.code) in (:codes)""";

    /** What others get for their own pieces is agreed with them; her sums know nothing of it. */
    private static final String OTHERS = """
            select upper(p.code)
            from piece_owner po
            join piece p on p.id = po.piece_id
            where upper(p.code) in (:codes)""";

    private final JdbcClient jdbc;

    AskedPieces(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** In the order of the codes; what is unknown is said beside the field. */
    List<AskedPiece> read(Answers answers, String typed) {
        Set<String> codes = Arrays.stream(typed.toUpperCase(Locale.ROOT).split("[\\s,;]+"))
                .filter(code -> !code.isBlank())
                .limit(MOST)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (codes.isEmpty()) {
            return List.of();
        }
        Map<String, AskedPiece> found = jdbc.sql(PIECES).param("codes", codes).query(AskedPiece.class).list().stream()
                .collect(Collectors.toMap(piece -> piece.code().toUpperCase(Locale.ROOT), Function.identity()));
        codes.stream()
                .filter(code -> !found.containsKey(code))
                .forEach(code -> answers.wrong("codes", "asking.error.unknown-piece", code));
        jdbc.sql(OTHERS)
                .param("codes", codes)
                .query(String.class)
                .list()
                .forEach(code -> answers.wrong("codes", "asking.error.others-piece", code));
        return codes.stream().filter(found::containsKey).map(found::get).toList();
    }
}
