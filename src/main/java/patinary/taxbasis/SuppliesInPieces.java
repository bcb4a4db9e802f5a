package patinary.taxbasis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Account;
import patinary.ledger.DocumentKind;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * How much of the landed cost of pieces in stock is cost of supplies. A piece leaves and comes back with all its cost in
 * one amount, so the part is followed from posting to posting; where pieces are joined or split it is shared as their cost is.
 */
final class SuppliesInPieces {

    /**
     * One posting that bears a piece, whatever its account.
     *
     * @param fromSupply whether it is the cost of a use
     */
    record PiecePosting(
            UUID documentId, DocumentKind kind, Account account, UUID pieceId, boolean fromSupply, Amount amount) {}

    private final Map<UUID, Amount> supplies = new HashMap<>();
    private final Map<UUID, Amount> inStock = new LinkedHashMap<>();
    private final List<PiecePosting> regrouping = new ArrayList<>();
    private @Nullable UUID open;

    private SuppliesInPieces() {}

    /**
     * The part of supplies by piece, of pieces in stock alone.
     *
     * @param postings in canonical order
     */
    static Map<UUID, Amount> of(List<PiecePosting> postings) {
        SuppliesInPieces sums = new SuppliesInPieces();
        postings.forEach(sums::take);
        sums.regroup();
        Map<UUID, Amount> result = new LinkedHashMap<>();
        sums.inStock.forEach((piece, cost) -> {
            Amount part = sums.supplies.getOrDefault(piece, Amount.ZERO);
            if (!cost.isZero() && !part.isZero()) {
                result.put(piece, part);
            }
        });
        return result;
    }

    private void take(PiecePosting row) {
        if (!row.documentId().equals(open)) {
            regroup();
            open = row.documentId();
        }
        if (row.account() == Account.PIECES) {
            inStock.merge(row.pieceId(), row.amount(), Amount::plus);
        }
        if (row.fromSupply()) {
            supplies.merge(row.pieceId(), row.amount(), Amount::plus);
        } else if (row.kind() == DocumentKind.REGROUPING) {
            regrouping.add(row);
        }
    }

    /** What went out of pieces goes into those that they became, by the cost each of them got. */
    private void regroup() {
        List<UUID> to = new ArrayList<>();
        List<Amount> weights = new ArrayList<>();
        Amount pool = Amount.ZERO;
        for (PiecePosting row : regrouping) {
            if (row.amount().isNegative()) {
                Amount own = supplies.remove(row.pieceId());
                pool = pool.plus(own == null ? Amount.ZERO : own);
            } else {
                to.add(row.pieceId());
                weights.add(row.amount());
            }
        }
        if (!to.isEmpty()) {
            List<Amount> shares = Shares.byAmount(pool, weights);
            for (int i = 0; i < to.size(); i++) {
                supplies.merge(to.get(i), shares.get(i), Amount::plus);
            }
        }
        regrouping.clear();
    }
}
