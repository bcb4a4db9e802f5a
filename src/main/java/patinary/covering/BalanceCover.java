package patinary.covering;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import patinary.money.Amount;

/**
 * A channel's balance in the light of its payouts. What no payout covers, less what the payouts took beyond what they cover, is
 * the balance: since every movement is covered once or not at all, that holds whatever she ticked.
 *
 * @param open movements that no payout covers, the oldest first
 * @param covers the payouts, the latest first
 */
record BalanceCover(List<Movement> open, List<Cover> covers) {

    static BalanceCover of(List<Movement> movements, List<PayoutFacts> payouts, List<Part> parts) {
        Map<UUID, List<Part>> byPayout = parts.stream().collect(Collectors.groupingBy(Part::payoutId));
        Set<UUID> covered = new HashSet<>();
        parts.forEach(part -> covered.add(part.movement().documentId()));
        return new BalanceCover(
                movements.stream()
                        .filter(movement -> !covered.contains(movement.documentId()))
                        .toList(),
                payouts.stream()
                        .map(payout -> new Cover(payout, byPayout.getOrDefault(payout.id(), List.of())))
                        .toList());
    }

    public Amount openSum() {
        return Movement.sum(open);
    }

    /** What payouts took beyond what they cover. */
    public Amount differences() {
        return covers.stream().map(Cover::difference).collect(Amount.sum());
    }

    public Amount balance() {
        return openSum().minus(differences());
    }
}
