package patinary.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * From where on each supply that a change touches is followed: from what was carried forward to the change where that tells all that
 * the moves after it ask for, from its first move where not. They ask for more where something comes back of a sale before it, where
 * a count settles uses that were left out, and where the supply is tied to a pot, which lays cost on uses long past.
 */
final class Beginnings {

    private final KeptBooks kept;
    private final CurrentMoves current;
    private final LocalDate day;
    private final Map<UUID, LocalDate> latest = new HashMap<>();
    private final List<Carried> begun = new ArrayList<>();

    /** @param day of the first document of the change */
    Beginnings(KeptBooks kept, CurrentMoves current, LocalDate day) {
        this.kept = kept;
        this.current = current;
        this.day = day;
    }

    /** The moves of these supplies from where each is to be followed, in any order. */
    List<StrandMove> moves(Collection<UUID> supplies) {
        List<StrandMove> moves = new ArrayList<>();
        Set<UUID> fromFirst = new HashSet<>(supplies);
        for (Carried carried : kept.carried(supplies, day)) {
            latest.put(carried.supply(), carried.day());
            follow(carried).or(() -> followWhole(carried)).ifPresent(found -> {
                fromFirst.remove(carried.supply());
                moves.addAll(found);
            });
        }
        moves.addAll(current.of(fromFirst));
        return moves;
    }

    private Optional<List<StrandMove>> followWhole(Carried carried) {
        return carried.isWhole()
                ? Optional.empty()
                : kept.carriedWhole(carried.supply(), day).flatMap(this::follow);
    }

    private Optional<List<StrandMove>> follow(Carried carried) {
        List<StrandMove> moves = current.of(carried.supply(), carried.day());
        Set<UUID> documents = moves.stream().map(move -> move.document().id()).collect(Collectors.toSet());
        if (moves.stream().anyMatch(move -> asksForMore(move.move(), carried, documents))) {
            return Optional.empty();
        }
        begun.add(carried);
        return Optional.of(moves);
    }

    private static boolean asksForMore(Move move, Carried carried, Set<UUID> documents) {
        return Strands.isTied(move)
                || move instanceof Move.SupplyBack back && !documents.contains(back.sale())
                || move instanceof Move.Counted counted && carried.leavesOut(counted.place());
    }

    /** What the supplies begin with that are not followed from their first move. */
    List<Carried> begun() {
        return begun;
    }

    /** Whether this is later than what was carried forward of the supply to the day of the change or before; the rest is there. */
    boolean isLater(Carried carried) {
        LocalDate before = latest.get(carried.supply());
        return before == null || carried.day().isAfter(before);
    }
}
