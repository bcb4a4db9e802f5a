package patinary.places;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds pieces by what their labels say. */
@Repository
public class PieceCodes {

    /** What is asked of pieces wherever they are listed by place. */
    static final String SELECT = """
            select p.id, p.code, p.title, p.place, s.state, s.price_minor, s.offer_id, s.sale_id
            from piece p join piece_state s on s.piece_id = p.id
            """;

    /** More codes than that are no list that a person has in hand. */
    public static final int MOST = 500;

    /**
     * What came of several codes.
     *
     * @param pieces those that were found, in the order of the codes, a piece once for each time it was named
     * @param unknown the codes, as typed, that no piece or more than one has
     */
    public record Read(List<PlacedPiece> pieces, List<String> unknown) {}

    private final JdbcClient jdbc;

    PieceCodes(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The one piece that a code means. */
    public Optional<PlacedPiece> find(String typed) {
        return read(List.of(typed)).pieces().stream().findFirst();
    }

    public Optional<PlacedPiece> find(UUID id) {
        return jdbc.sql(SELECT + "where p.id = ?")
                .param(id)
                .query(PlacedPiece.class)
                .optional();
    }

    /** Looks all codes up at once; those beyond {@link #MOST} count as unknown. */
    public Read read(List<String> typed) {
        List<String> meant = typed.stream()
                .limit(MOST)
                .flatMap(code -> CodeText.meanings(code).stream())
                .distinct()
                .toList();
        Map<String, List<PlacedPiece>> known = meant.isEmpty() ? Map.of() : byPlainCode(meant);
        List<PlacedPiece> found = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        for (int i = 0; i < typed.size(); i++) {
            Optional<PlacedPiece> piece = i < MOST ? one(typed.get(i), known) : Optional.empty();
            piece.ifPresentOrElse(found::add, () -> {});
            if (piece.isEmpty()) {
                unknown.add(typed.get(i));
            }
        }
        return new Read(found, unknown);
    }

    /** The first meaning that some piece has; between several with the same plain code, the one written just so. */
    private static Optional<PlacedPiece> one(String typed, Map<String, List<PlacedPiece>> known) {
        List<PlacedPiece> alike = CodeText.meanings(typed).stream()
                .map(meaning -> known.getOrDefault(meaning, List.of()))
                .filter(pieces -> !pieces.isEmpty())
                .findFirst()
                .orElse(List.of());
        return alike.size() == 1
                ? Optional.of(alike.get(0))
                : alike.stream()
                        .filter(piece -> piece.code().equalsIgnoreCase(typed.strip()))
                        .findFirst();
    }

    private Map<String, List<PlacedPiece>> byPlainCode(Collection<String> meant) {
        Map<String, List<PlacedPiece>> known = new LinkedHashMap<>();
        jdbc.sql(SELECT + """
                        where replace(replace(replace(upper(p.code), '-', ''), ' ', ''), '.', '') in (:meant)
                        order by p.code""")
                .param("meant", meant)
                .query(PlacedPiece.class)
                .list()
                .forEach(piece -> known.computeIfAbsent(CodeText.plain(piece.code()), code -> new ArrayList<>())
                        .add(piece));
        return known;
    }
}
