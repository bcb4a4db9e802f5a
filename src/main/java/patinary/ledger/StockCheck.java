package patinary.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.UUID;
import patinary.money.Amount;

/** Compares what the stored postings say is in stock with what costing says. */
final class StockCheck {

    private record Left(BigDecimal quantity, Amount cost) {
        static final Left NONE = new Left(BigDecimal.ZERO, Amount.ZERO);

        Left plus(BigDecimal moreQuantity, Amount moreCost) {
            return new Left(quantity.add(moreQuantity), cost.plus(moreCost));
        }

        boolean isSame(Left other) {
            return quantity.compareTo(other.quantity) == 0 && cost.equals(other.cost);
        }

        @Override
        public String toString() {
            return quantity.stripTrailingZeros().toPlainString() + " at " + cost.minor();
        }
    }

    private StockCheck() {}

    static List<Finding> differences(Replay.Result replay, Map<UUID, List<Posting>> stored) {
        Map<String, Left> supplies = new HashMap<>();
        Map<String, Left> pieces = new HashMap<>();
        stored.values().stream().flatMap(Collection::stream).forEach(posting -> {
            UUID supply = posting.tags().supply();
            UUID piece = posting.tags().piece();
            if (posting.account() == Account.PIECES && piece != null) {
                add(pieces, piece.toString(), BigDecimal.ZERO, posting.amount());
            } else if (posting.account().isStock() && supply != null) {
                add(supplies, supply + " " + posting.account(), posting.quantity(), posting.amount());
            }
        });
        Map<String, Left> derivedSupplies = new HashMap<>();
        replay.stock()
                .forEach(left -> add(
                        derivedSupplies, left.supply() + " " + left.place().account(), left.quantity(), left.cost()));
        Map<String, Left> derivedPieces = new HashMap<>();
        replay.pieces().forEach((piece, cost) -> add(derivedPieces, piece.toString(), BigDecimal.ZERO, cost));
        List<Finding> findings = compare(Finding.What.STOCK, derivedSupplies, supplies);
        findings.addAll(compare(Finding.What.PIECE, derivedPieces, pieces));
        return findings;
    }

    private static void add(Map<String, Left> sums, String key, BigDecimal quantity, Amount cost) {
        sums.put(key, sums.getOrDefault(key, Left.NONE).plus(quantity, cost));
    }

    private static List<Finding> compare(Finding.What what, Map<String, Left> expected, Map<String, Left> found) {
        TreeSet<String> keys = new TreeSet<>(expected.keySet());
        keys.addAll(found.keySet());
        List<Finding> findings = new ArrayList<>();
        for (String key : keys) {
            Left should = expected.getOrDefault(key, Left.NONE);
            Left is = found.getOrDefault(key, Left.NONE);
            if (!should.isSame(is)) {
                findings.add(Finding.books(what, key, should, is));
            }
        }
        return findings;
    }
}
