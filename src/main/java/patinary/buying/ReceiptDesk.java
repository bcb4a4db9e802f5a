package patinary.buying;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.orm.ObjectOptimisticLockingFailureException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;

/** Records, changes and removes receipts together with the pieces and sources they bring. */
@Service
@Transactional
class ReceiptDesk {

    private final Books books;
    private final Sources sources;
    private final ReceiptPieces pieces;

    ReceiptDesk(Books books, Sources sources, ReceiptPieces pieces) {
        this.books = books;
        this.sources = sources;
        this.pieces = pieces;
    }

    /**
     * Records a receipt; one that is already there under this id is left as it is, because a phone may send it twice.
     *
     * @throws PieceTaken where a piece's id is another's
     * @throws patinary.ledger.Refused where it cannot be true beside the other documents
     */
    void record(ReceiptDraft draft) {
        books.hold();
        if (books.find(Receipt.class, draft.id()).isPresent()) {
            return;
        }
        UUID source = source(draft);
        List<ReceiptPiece> stored = pieces.store(draft.pieces(), Set.of());
        books.record(new Receipt(draft.id(), draft.with(source, stored)));
    }

    /**
     * Takes over a changed receipt. Its pieces keep their ids; pieces that are no longer on it go away.
     *
     * @throws PieceInUse where one of those is still spoken of
     * @throws patinary.ledger.Refused where it cannot be true beside the other documents
     */
    void change(ReceiptDraft draft) {
        Receipt receipt = find(draft.id()).orElseThrow();
        if (receipt.version() != draft.version()) {
            throw new ObjectOptimisticLockingFailureException(Receipt.class, draft.id());
        }
        Set<UUID> before = pieceIds(receipt.content());
        UUID source = source(draft);
        // Pieces come first: storing them also stores what else was changed, and the books must see the date it had.
        List<ReceiptPiece> stored = pieces.store(draft.pieces(), before);
        receipt.rewrite(draft.with(source, stored));
        books.changed(receipt);
        Set<UUID> gone = new HashSet<>(before);
        stored.forEach(piece -> gone.remove(piece.pieceId()));
        pieces.remove(gone);
    }

    /**
     * Removes a receipt and its pieces.
     *
     * @throws PieceInUse where one of them is still spoken of
     * @throws patinary.ledger.Refused where other documents rest on it
     */
    void remove(UUID id) {
        Receipt receipt = find(id).orElseThrow();
        Set<UUID> gone = pieceIds(receipt.content());
        books.remove(receipt);
        pieces.remove(gone);
    }

    /** A receipt with all its lines. */
    @Transactional(readOnly = true)
    Optional<Stored> read(UUID id) {
        return books.read(Receipt.class, id)
                .map(receipt -> new Stored(receipt.id(), receipt.version(), receipt.content()));
    }

    private Optional<Receipt> find(UUID id) {
        return books.find(Receipt.class, id);
    }

    private @Nullable UUID source(ReceiptDraft draft) {
        if (draft.newSource().isEmpty()) {
            return draft.content().sourceId();
        }
        return sources.findAllByOrderByName().stream()
                .filter(source -> source.name().equalsIgnoreCase(draft.newSource()))
                .findFirst()
                .orElseGet(() -> sources.save(new Source(UUID.randomUUID(), draft.newSource(), "", "", null)))
                .id();
    }

    private static Set<UUID> pieceIds(ReceiptContent content) {
        return content.pieces().stream().map(ReceiptPiece::pieceId).collect(Collectors.toSet());
    }

    /** A receipt as it is stored. */
    record Stored(UUID id, long version, ReceiptContent content) {}
}
