package patinary.pieces;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.web.NotFound;

/** Reads and changes what is known of pieces. */
@Service
class PieceDesk {

    /** What is stored of a piece. */
    record Stored(
            UUID id,
            Piece.Facts facts,
            PieceForm form,
            @Nullable UUID finishId,
            SurfaceReading.Surface surface) {}

    private final Pieces pieces;
    private final OwnLists lists;
    private final Trail trail;

    PieceDesk(Pieces pieces, OwnLists lists, Trail trail) {
        this.pieces = pieces;
        this.lists = lists;
        this.trail = trail;
    }

    /** @throws NotFound where there is no such piece */
    @Transactional(readOnly = true)
    public Stored read(UUID id) {
        Piece piece = find(id);
        return new Stored(
                id,
                piece.facts(),
                PieceForm.of(piece),
                piece.plannedFinishId(),
                new SurfaceReading.Surface(piece.facts().area(), piece.measuredShape()));
    }

    /**
     * Changes a piece, adding the kind and the style that were typed by name.
     *
     * @throws OptimisticLockingFailureException where it was changed after the form was drawn
     */
    @Transactional
    public void change(UUID id, long version, PieceReading.Typed typed) {
        Piece piece = find(id);
        if (piece.version() != version) {
            throw new OptimisticLockingFailureException("Piece " + id + " is stale");
        }
        trail.thing("piece", id);
        Piece.Facts facts = typed.facts();
        piece.rewrite(new Piece.Facts(
                facts.code(),
                facts.title(),
                named(OwnList.KINDS, typed.newKind(), facts.kindId()),
                named(OwnList.STYLES, typed.newStyle(), facts.styleId()),
                facts.material(),
                facts.area(),
                facts.place(),
                facts.note(),
                facts.tags()));
        piece.plan(typed.finishId(), typed.shape());
        pieces.saveAndFlush(piece);
    }

    private @Nullable UUID named(OwnList list, String name, @Nullable UUID chosen) {
        return Optional.of(name)
                .filter(text -> !text.isBlank())
                .map(text -> lists.add(list, text))
                .orElse(chosen);
    }

    private Piece find(UUID id) {
        return pieces.findWithTags(id).orElseThrow(() -> new NotFound("piece " + id));
    }
}
