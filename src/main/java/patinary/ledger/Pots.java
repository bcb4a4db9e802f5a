package patinary.ledger;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import patinary.ledger.Move.Destination;

/** Which mixed pots were made of which supplies. No pot may be in itself: its cost would run in a circle. */
final class Pots {

    private final Map<UUID, Set<UUID>> ingredients = new HashMap<>();

    /** Notes what a use goes into, unless one of its pots is already in what is used. */
    boolean mayTake(Move.SupplyOut move) {
        if (move.to() instanceof Destination.Mix mix) {
            if (mix.pots().stream().anyMatch(share -> isIn(share.pot(), move.supply()))) {
                return false;
            }
            mix.pots()
                    .forEach(share -> ingredients
                            .computeIfAbsent(share.pot(), pot -> new HashSet<>())
                            .add(move.supply()));
        }
        return true;
    }

    private boolean isIn(UUID pot, UUID supply) {
        Deque<UUID> open = new ArrayDeque<>(Set.of(supply));
        Set<UUID> seen = new HashSet<>();
        while (!open.isEmpty()) {
            UUID next = open.pop();
            if (next.equals(pot)) {
                return true;
            }
            if (seen.add(next)) {
                open.addAll(ingredients.getOrDefault(next, Set.of()));
            }
        }
        return false;
    }
}
