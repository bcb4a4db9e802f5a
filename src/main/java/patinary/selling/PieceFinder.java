package patinary.selling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.lists.Where;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Words;

/** Finds pieces by the codes on their labels. */
@Component
class PieceFinder {

    private static final String REF = """
            select p.id, p.code, p.title, s.state
            from piece p
            join piece_state s on s.piece_id = p.id
            """;

    /** What she works on for its owner is sold to that owner and never on offer. */
    private static final String NO_COMMISSION =
            "not exists (select 1 from piece_owner po where po.piece_id = p.id and po.arrangement = 'COMMISSION')";

    private final JdbcClient jdbc;

    PieceFinder(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The pieces of a typed list of codes, in its order; what is unknown or named twice is said beside the field. */
    List<PieceRef> read(Answers answers, String field, String typed) {
        List<String> codes = codes(typed);
        if (codes.isEmpty()) {
            answers.wrong(field, "selling.error.no-piece");
            return List.of();
        }
        Map<String, PieceRef> found = byCode(codes);
        List<PieceRef> pieces = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        for (String code : codes) {
            PieceRef piece = found.get(code);
            if (piece == null) {
                answers.wrong(field, "selling.error.unknown-piece", code);
            } else if (!seen.add(code)) {
                answers.wrong(field, "selling.error.piece-twice", code);
            } else {
                pieces.add(piece);
            }
        }
        return pieces;
    }

    /** The codes of a text, in capitals. */
    static List<String> codes(String typed) {
        return Arrays.stream(typed.toUpperCase(Locale.ROOT).split("[\\s,;]+"))
                .filter(code -> !code.isBlank())
                .toList();
    }

    Map<UUID, PieceRef> byId(Collection<UUID> ids) {
        if (ids.isEmpty()) {
            return Map.of();
        }
        return jdbc.sql(REF + " where p.id in (:ids)").param("ids", ids).query(PieceRef.class).list().stream()
                .collect(Collectors.toMap(PieceRef::id, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    /** Pieces that may be offered or sold and fit the words, those that are ready first. */
    Choosable choices(boolean withOffered, String words) {
        Where where = new Where()
                .and("s.state in "
                        + (withOffered ? "('READY', 'FOUND', 'BENCH', 'OFFERED')" : "('READY', 'FOUND', 'BENCH')"))
                .words(Words.in("p.code", "p.title"), words);
        if (!withOffered) {
            where.and(NO_COMMISSION);
        }
        return Choosable.of(jdbc
                .sql(REF + where.sql()
                        + " order by case s.state when 'READY' then 1 when 'OFFERED' then 2 else 3 end, p.code"
                        + " fetch first " + (Choosable.MOST + 1) + " rows only")
                .params(where.values())
                .query(PieceRef.class)
                .list()
                .stream()
                .map(piece -> Choice.named(piece.code(), piece.code() + " " + piece.title()))
                .toList());
    }

    private Map<String, PieceRef> byCode(List<String> codes) {
        return jdbc
                .sql(REF + " where upper(p.code) in (:codes)")
                .param("codes", codes)
                .query(PieceRef.class)
                .list()
                .stream()
                .collect(Collectors.toMap(piece -> piece.code().toUpperCase(Locale.ROOT), Function.identity()));
    }
}
