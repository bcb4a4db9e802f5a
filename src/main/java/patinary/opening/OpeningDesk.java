package patinary.opening;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.pieces.NewPieces;

/** Reads and records the one opening of the shop. */
@Service
class OpeningDesk {

    /** What is recorded. */
    record Stored(long version, Opening.Content content) {}

    /** A piece was taken out of the opening that other documents name: it cannot be taken out. */
    static final class StillNamed extends RuntimeException {

        private static final long serialVersionUID = 1L;

        StillNamed(UUID piece) {
            super("Piece " + piece + " is named by other documents");
        }
    }

    private final Books books;
    private final NewPieces newPieces;
    private final JdbcClient jdbc;

    OpeningDesk(Books books, NewPieces newPieces, JdbcClient jdbc) {
        this.books = books;
        this.newPieces = newPieces;
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    public Optional<Stored> read() {
        return find().map(opening -> new Stored(opening.version(), opening.content()));
    }

    /**
     * Records the opening, or changes it; its new pieces come into being in the same step.
     *
     * @param version the version the form was drawn from, below zero where there was none
     * @throws patinary.ledger.Refused where it cannot be true beside what was recorded since
     * @throws StillNamed where a piece that other documents name was taken out
     */
    @Transactional
    public void save(OpeningDraft draft, long version) {
        Optional<Opening> known = find();
        long stored = known.map(Opening::version).orElse(-1L);
        if (stored != version) {
            throw new OptimisticLockingFailureException("The opening changed in between");
        }
        if (known.isEmpty()) {
            books.record(new Opening(Opening.ONLY, draft.complete(newPieces)));
            return;
        }
        Opening opening = known.get();
        Set<UUID> gone = new HashSet<>(pieces(opening));
        opening.rewrite(draft.complete(newPieces));
        gone.removeAll(pieces(opening));
        books.changed(opening);
        for (UUID piece : gone) {
            if (!newPieces.discard(piece)) {
                throw new StillNamed(piece);
            }
        }
    }

    private static Set<UUID> pieces(Opening opening) {
        return opening.content().pieces().stream()
                .map(Opening.OpeningPiece::pieceId)
                .collect(Collectors.toSet());
    }

    /** An opening that came with an archive may have another id. */
    private Optional<Opening> find() {
        return jdbc.sql("select id from opening order by id fetch first 1 row only")
                .query(UUID.class)
                .optional()
                .flatMap(id -> books.find(Opening.class, id));
    }
}
