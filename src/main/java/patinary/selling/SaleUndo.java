package patinary.selling;

import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.ledger.Refused;

/** Undoes a sale: its pieces are for sale again. What hangs on it must be removed first. */
@Component
class SaleUndo {

    private final SellingDocuments documents;
    private final SaleGuard guard;

    SaleUndo(SellingDocuments documents, SaleGuard guard) {
        this.documents = documents;
        this.guard = guard;
    }

    /**
     * Removes a sale, or leaves it.
     *
     * @param removed the key of the message where it is gone
     * @return the key of the message that tells what happened
     * @throws patinary.web.NotFound where there is no such sale
     */
    String undo(UUID sale, String removed) {
        if (guard.followers(sale) > 0) {
            return "selling.error.followers";
        }
        try {
            documents.remove(Sale.class, sale);
            return removed;
        } catch (Refused refused) {
            return "selling.error.undo";
        }
    }
}
