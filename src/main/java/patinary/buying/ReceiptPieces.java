package patinary.buying;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import patinary.buying.ReceiptDraft.DraftPiece;
import patinary.ledger.Trail;
import patinary.pieces.NewPieces;
import patinary.pieces.Piece;
import patinary.pieces.Pieces;

/** Makes, changes and takes away the pieces that a receipt brings. */
@Component
class ReceiptPieces {

    private final NewPieces newPieces;
    private final Pieces pieces;
    private final JdbcTemplate jdbc;
    private final Trail trail;

    ReceiptPieces(NewPieces newPieces, Pieces pieces, JdbcTemplate jdbc, Trail trail) {
        this.newPieces = newPieces;
        this.pieces = pieces;
        this.jdbc = jdbc;
        this.trail = trail;
    }

    /**
     * Stores the pieces of a draft. Those that the receipt had before keep their ids; a new one gets the id that a phone
     * made for it, so that photos taken with it find it.
     *
     * @throws PieceTaken where such an id is another piece's
     */
    List<ReceiptPiece> store(List<DraftPiece> drafts, Set<UUID> before) {
        List<ReceiptPiece> stored = new ArrayList<>();
        for (DraftPiece draft : drafts) {
            UUID id = draft.id();
            boolean known = id != null
                    && before.contains(id)
                    && stored.stream().noneMatch(p -> p.pieceId().equals(id));
            if (known) {
                rewrite(id, draft);
            }
            stored.add(new ReceiptPiece(draft.line(), known ? id : create(draft), draft.weight()));
        }
        return stored;
    }

    /**
     * Takes away pieces after their receipt has let go of them.
     *
     * @throws PieceInUse where another document, a photo or the like still names one
     */
    void remove(Collection<UUID> gone) {
        for (UUID piece : gone) {
            trail.thing("piece", piece);
            try {
                jdbc.update("delete from piece_tag where piece_id = ?", piece);
                jdbc.update("delete from piece where id = ?", piece);
            } catch (DataIntegrityViolationException inUse) {
                throw new PieceInUse(piece, inUse);
            }
        }
    }

    /** The code and title of a piece, for a sentence about it. */
    @Transactional(readOnly = true)
    String name(UUID piece) {
        return pieces.findById(piece)
                .map(Piece::facts)
                .map(facts -> facts.code() + " " + facts.title())
                .orElse("");
    }

    private UUID create(DraftPiece draft) {
        UUID id = draft.id();
        if (id != null) {
            if (newPieces.isThere(id)) {
                throw new PieceTaken(id);
            }
            newPieces.create(id, draft.title(), draft.kindId(), draft.styleId());
            return id;
        }
        return newPieces.create(draft.title(), draft.kindId(), draft.styleId());
    }

    private void rewrite(UUID id, DraftPiece draft) {
        trail.thing("piece", id);
        pieces.findById(id).ifPresent(piece -> {
            Piece.Facts old = piece.facts();
            piece.rewrite(new Piece.Facts(
                    old.code(),
                    draft.title(),
                    draft.kindId(),
                    draft.styleId(),
                    old.material(),
                    old.area(),
                    old.place(),
                    old.note(),
                    old.tags()));
        });
    }
}
