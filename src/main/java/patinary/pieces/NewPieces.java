package patinary.pieces;

import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.figures.Figures;
import patinary.ledger.Trail;

/** Makes pieces for the documents that bring them, each with the next free code. */
@Service
public class NewPieces {

    private static final Pattern OWN = Pattern.compile("P[0-9]{4,8}");

    /** Every table in which a document names a piece. */
    private static final List<String> NAMED_IN = List.of(
            "receipt_piece",
            "opening_piece",
            "supplier_return_piece",
            "bench_piece",
            "bench_use_piece",
            "bench_pot_piece",
            "bench_mishap",
            "offer_piece",
            "sale_piece",
            "sale_undelivered",
            "refund_line",
            "letting_go",
            "regrouping_from",
            "regrouping_to",
            "posting");

    private final Pieces pieces;
    private final Figures figures;
    private final JdbcTemplate jdbc;
    private final Trail trail;

    NewPieces(Pieces pieces, Figures figures, JdbcTemplate jdbc, Trail trail) {
        this.pieces = pieces;
        this.figures = figures;
        this.jdbc = jdbc;
        this.trail = trail;
    }

    /** A new piece with the next code; to be called inside the transaction that records its document. */
    @Transactional
    public UUID create(String title, @Nullable UUID kindId, @Nullable UUID styleId) {
        UUID id = UUID.randomUUID();
        create(id, title, kindId, styleId);
        return id;
    }

    /** A new piece under a code of her own, which must be free; see {@link #isTaken}. */
    @Transactional
    public UUID create(String code, String title, @Nullable UUID kindId, @Nullable UUID styleId) {
        UUID id = UUID.randomUUID();
        store(id, code, title, kindId, styleId);
        return id;
    }

    private void store(UUID id, String code, String title, @Nullable UUID kindId, @Nullable UUID styleId) {
        trail.thing("piece", id);
        pieces.saveAndFlush(new Piece(id, new Piece.Facts(code, title, kindId, styleId, "", null, "", "", List.of())));
        figures.pieceMade(id);
    }

    /**
     * A new piece with the next code under an id that a phone made, which must be free; see {@link #isThere}.
     */
    @Transactional
    public void create(UUID id, String title, @Nullable UUID kindId, @Nullable UUID styleId) {
        // Takes the turn, so that nobody else draws the same next code at this moment.
        trail.thing("piece", id);
        store(id, nextCode(), title, kindId, styleId);
    }

    /** Whether there is a piece with this id. */
    public boolean isThere(UUID id) {
        return pieces.findById(id).isPresent();
    }

    /** Whether another piece bears this code, capitals or not. */
    public boolean isTaken(String code) {
        return pieces.existsByCodeIgnoreCase(code);
    }

    /**
     * Takes out a piece that no document names any more, after the one that brought it was removed.
     *
     * @return whether it is gone; where a document still names it, it stays
     */
    @Transactional
    public boolean discard(UUID id) {
        for (String table : NAMED_IN) {
            Integer named =
                    jdbc.queryForObject("select count(*) from " + table + " where piece_id = ?", Integer.class, id);
            if (named != null && named > 0) {
                return false;
            }
        }
        trail.thing("piece", id);
        pieces.findById(id).ifPresent(pieces::delete);
        return true;
    }

    /** P and four digits; more where the shop has had ten thousand pieces. Her own codes of another form are left out. */
    String nextCode() {
        int last = jdbc.queryForList("select code from piece where code like 'P%'", String.class).stream()
                .filter(code -> OWN.matcher(code).matches())
                .mapToInt(code -> Integer.parseInt(code.substring(1)))
                .max()
                .orElse(0);
        return "P%04d".formatted(last + 1);
    }
}
