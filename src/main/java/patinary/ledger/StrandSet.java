package patinary.ledger;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import patinary.ledger.StrandMove.Step;

/**
 * The strands that a change makes be followed again, each with its moves as they are after the change. What is tied to one of them, as
 * an ingredient is to its pot or a piece to the set it was made part of, is followed with it.
 */
final class StrandSet {

    private final Function<Collection<UUID>, List<StrandMove>> read;
    private final Set<UUID> strands = new HashSet<>();
    private final Map<Step, StrandMove> moves = new LinkedHashMap<>();
    private final Map<UUID, Set<Integer>> numbers = new HashMap<>();

    /** @param read gives the moves of some strands, as they are after the change, in any order */
    StrandSet(Function<Collection<UUID>, List<StrandMove>> read) {
        this.read = read;
    }

    void follow(Collection<UUID> wanted) {
        Set<UUID> open = new HashSet<>(wanted);
        open.removeAll(strands);
        while (!open.isEmpty()) {
            strands.addAll(open);
            List<StrandMove> found = read.apply(open);
            found.forEach(move -> {
                moves.put(move.step(), move);
                numbers.computeIfAbsent(move.document().id(), id -> new HashSet<>())
                        .add(move.number());
            });
            open = found.stream()
                    .flatMap(move -> Strands.of(move.move()).stream())
                    .filter(strand -> !strands.contains(strand))
                    .collect(Collectors.toSet());
        }
    }

    Set<UUID> strands() {
        return strands;
    }

    boolean has(Step step) {
        return moves.containsKey(step);
    }

    Move move(Step step) {
        return moves.get(step).move();
    }

    /** The places, among all moves of a document, of those that belong to these strands. */
    Set<Integer> numbers(DocumentRef document) {
        return numbers.getOrDefault(document.id(), Set.of());
    }

    /** All moves once, in canonical order. */
    List<StrandMove> inOrder() {
        return moves.values().stream().sorted(StrandMove.CANONICAL).toList();
    }

    /** The documents of the moves from this one on. */
    Set<DocumentRef> documentsFrom(DocumentRef from) {
        return moves.values().stream()
                .map(StrandMove::document)
                .filter(document -> document.compareTo(from) >= 0)
                .collect(Collectors.toSet());
    }
}
