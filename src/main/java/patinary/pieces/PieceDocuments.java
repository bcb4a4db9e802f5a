package patinary.pieces;

import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Books;
import patinary.ledger.Document;
import patinary.web.NotFound;

/** Records and takes back what happens to pieces without a sale. */
@Service
class PieceDocuments {

    /** New pieces of a regrouping that other documents name already: it cannot be taken back. */
    static final class StillNamed extends RuntimeException {

        private static final long serialVersionUID = 1L;

        StillNamed(UUID piece) {
            super("Piece " + piece + " is named by other documents");
        }
    }

    private final Books books;
    private final NewPieces newPieces;

    PieceDocuments(Books books, NewPieces newPieces) {
        this.books = books;
        this.newPieces = newPieces;
    }

    /**
     * Records a letting go; a form sent twice is one document.
     *
     * @throws patinary.ledger.Refused where the piece has left already or the year is sealed
     */
    @Transactional
    public void letGo(LettingGo document) {
        recordOnce(document);
    }

    /** Takes a letting go back: the piece stands where it stood. */
    @Transactional
    public void takeBack(UUID id) {
        books.remove(find(LettingGo.class, id));
    }

    /**
     * Records a joining or splitting, making its new pieces in the same step.
     *
     * @return the piece to look at next
     */
    @Transactional
    public UUID regroup(RegroupingPlan plan) {
        return books.find(Regrouping.class, plan.id())
                .map(known -> known.to().get(0).pieceId())
                .orElseGet(() -> {
                    Regrouping document = plan.toDocument(newPieces);
                    books.record(document);
                    return document.to().get(0).pieceId();
                });
    }

    /**
     * Takes a regrouping back, and with it the pieces that it made.
     *
     * @throws StillNamed where something has happened to one of them since
     */
    @Transactional
    public void ungroup(UUID id) {
        Regrouping document = find(Regrouping.class, id);
        var before = document.from();
        var made = document.to().stream()
                .map(Regrouping.Part::pieceId)
                .filter(piece -> !before.contains(piece))
                .toList();
        books.remove(document);
        for (UUID piece : made) {
            if (!newPieces.discard(piece)) {
                throw new StillNamed(piece);
            }
        }
    }

    private void recordOnce(Document document) {
        if (books.find(document.getClass(), document.id()).isEmpty()) {
            books.record(document);
        }
    }

    private <D extends Document> D find(Class<D> type, UUID id) {
        return books.find(type, id).orElseThrow(() -> new NotFound(type.getSimpleName() + " " + id));
    }
}
