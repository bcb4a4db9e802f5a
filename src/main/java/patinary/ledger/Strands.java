package patinary.ledger;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import patinary.ledger.Move.Destination;

/**
 * Which strands a move belongs to. A fixed amount belongs to none: it depends on nothing but its document. Costs flow from
 * supplies to pieces and never back, so a use is of its supply, and of the pots that it was mixed into, but not of the pieces.
 */
final class Strands {

    private Strands() {}

    static List<StrandMove> of(DocumentMoves document) {
        List<StrandMove> result = new ArrayList<>();
        for (int number = 0; number < document.moves().size(); number++) {
            Move move = document.moves().get(number);
            for (UUID strand : of(move)) {
                result.add(new StrandMove(strand, document.document(), number, move));
            }
        }
        return result;
    }

    /** Each strand once. What several of them share must be followed together. */
    static Set<UUID> of(Move move) {
        return new LinkedHashSet<>(named(move));
    }

    private static List<UUID> named(Move move) {
        if (move instanceof Move.SupplyOut out) {
            return out.to() instanceof Destination.Mix mix
                    ? Stream.concat(Stream.of(out.supply()), mix.pots().stream().map(PotShare::pot))
                            .toList()
                    : List.of(out.supply());
        } else if (move instanceof Move.Regroup regroup) {
            return Stream.concat(regroup.from().stream(), regroup.to().stream().map(PieceShare::piece))
                    .toList();
        }
        return single(move);
    }

    private static List<UUID> single(Move move) {
        if (move instanceof Move.SupplyIn in) {
            return List.of(in.supply());
        } else if (move instanceof Move.SupplyBack back) {
            return List.of(back.supply());
        } else if (move instanceof Move.Mixed mixed) {
            return List.of(mixed.pot());
        } else if (move instanceof Move.Counted counted) {
            return List.of(counted.supply());
        } else if (move instanceof Move.PieceIn in) {
            return List.of(in.piece());
        } else if (move instanceof Move.PieceOut out) {
            return List.of(out.piece());
        } else if (move instanceof Move.PieceBack back) {
            return List.of(back.piece());
        } else if (move instanceof Move.MoneyCounted counted) {
            return List.of(counted.place());
        }
        return List.of();
    }

    /** Whether a move lays cost on a pot, or makes one: what comes to the pot later lies on all that was used of it. */
    static boolean isTied(Move move) {
        return move instanceof Move.Mixed
                || move instanceof Move.SupplyOut out
                        && out.to() instanceof Destination.Mix mix
                        && !mix.pots().isEmpty();
    }

    static boolean isOfPieces(Move move) {
        return move instanceof Move.PieceIn
                || move instanceof Move.PieceOut
                || move instanceof Move.PieceBack
                || move instanceof Move.Regroup;
    }

    static boolean isOfMoney(Move move) {
        return move instanceof Move.MoneyCounted;
    }

    static boolean isOfSupplies(Move move) {
        return !isOfPieces(move) && !isOfMoney(move) && !(move instanceof Move.Post);
    }
}
