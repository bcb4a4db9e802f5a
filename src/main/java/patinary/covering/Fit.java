package patinary.covering;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Movements that add up exactly to a payout: a proposal, never more.
 *
 * @param movements what it would cover
 * @param from the first day
 * @param upTo the last day of which everything is covered, but what is left out
 * @param leftOut of these days, but not covered
 * @param added of a later day, but covered
 */
record Fit(List<Movement> movements, LocalDate from, LocalDate upTo, List<Movement> leftOut, List<Movement> added) {

    Set<UUID> documents() {
        return movements.stream().map(Movement::documentId).collect(Collectors.toSet());
    }

    public boolean isWhole() {
        return leftOut.isEmpty() && added.isEmpty();
    }
}
