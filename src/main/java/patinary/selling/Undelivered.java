package patinary.selling;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.ledger.Refused;

/** Orders, or things of an order, that were cancelled before they were sent; and taking that back. */
@Component
class Undelivered {

    private final SellingDocuments documents;
    private final JdbcClient jdbc;

    Undelivered(SellingDocuments documents, JdbcClient jdbc) {
        this.documents = documents;
        this.jdbc = jdbc;
    }

    /**
     * Says that an order does not get these pieces, and records what goes back for it: both or nothing.
     *
     * @param pieces may be none; then it is a refund like any other
     * @throws Refused where the books cannot have it so
     */
    void cancel(Refund refund, Collection<UUID> pieces) {
        documents.together(() -> {
            keepBack(refund.content().saleId(), pieces);
            documents.record(refund);
        });
    }

    void keepBack(UUID saleId, Collection<UUID> pieces) {
        if (!pieces.isEmpty()) {
            documents.changeNow(
                    Sale.class, saleId, sale -> sale.rewrite(sale.content().withoutDelivering(pieces)));
        }
    }

    /**
     * Has the order get everything after all; the refunds that were for nothing but what it did not get are removed with it.
     *
     * @throws Refused where one of the pieces has gone another way since
     */
    void deliverAfterAll(UUID saleId) {
        documents.together(() -> {
            List<UUID> refunds = jdbc.sql("select id from refund where sale_id = ?")
                    .param(saleId)
                    .query(UUID.class)
                    .list();
            Set<UUID> pieces = new HashSet<>();
            documents.changeNow(Sale.class, saleId, sale -> {
                sale.content().undelivered().forEach(piece -> pieces.add(piece.pieceId()));
                sale.rewrite(sale.content().deliveringAll());
            });
            refunds.stream()
                    .filter(refund -> documents
                            .read(Refund.class, refund, Refund::content)
                            .filter(content -> isOnlyFor(content, pieces))
                            .isPresent())
                    .forEach(refund -> documents.remove(Refund.class, refund));
        });
    }

    private static boolean isOnlyFor(RefundContent refund, Set<UUID> pieces) {
        return !refund.lines().isEmpty() && refund.lines().stream().allMatch(line -> pieces.contains(line.pieceId()));
    }
}
