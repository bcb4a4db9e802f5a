package patinary.selling;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.money.Percent;

/** Says on a sale what its pieces owe their owners, where they are sold for somebody. */
@Component
class OwnerShares {

    private record Row(
            UUID pieceId,
            @Nullable BigDecimal sharePercent,
            @Nullable Long shareMinor) {}

    private final JdbcClient jdbc;

    OwnerShares(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The same sale with what is owed for each piece, by the terms as they are now. */
    SaleContent on(SaleContent sale) {
        List<UUID> pieces = sale.ordered().stream().map(SalePiece::pieceId).toList();
        if (pieces.isEmpty()) {
            return sale;
        }
        Map<UUID, OwnerTerms> terms = new HashMap<>();
        jdbc.sql("""
                        select piece_id, share_percent, share_minor
                        from piece_owner
                        where arrangement = 'CONSIGNED' and piece_id in (:pieces)""")
                .param("pieces", pieces)
                .query(Row.class)
                .list()
                .forEach(row -> terms.put(row.pieceId(), terms(row)));
        return sale.owing(terms);
    }

    /** Of these pieces, those that are worked on for their owner: they are never on offer. */
    Set<UUID> commissions(List<UUID> pieces) {
        return pieces.isEmpty()
                ? Set.of()
                : Set.copyOf(jdbc.sql(
                                "select piece_id from piece_owner where arrangement = 'COMMISSION' and piece_id in (:pieces)")
                        .param("pieces", pieces)
                        .query(UUID.class)
                        .list());
    }

    private static OwnerTerms terms(Row row) {
        return new OwnerTerms(
                row.sharePercent() == null ? null : new Percent(row.sharePercent()),
                row.shareMinor() == null ? null : Amount.of(row.shareMinor()));
    }
}
