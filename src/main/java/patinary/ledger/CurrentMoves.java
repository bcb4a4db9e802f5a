package patinary.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;

/** The moves of strands as they are after a change: those kept, but of the changed documents those that they have now. */
final class CurrentMoves {

    private final KeptBooks kept;
    private final Change change;

    CurrentMoves(KeptBooks kept, Change change) {
        this.kept = kept;
        this.change = change;
    }

    /** All moves of these strands, in any order. */
    List<StrandMove> of(Collection<UUID> strands) {
        return now(kept.strands(strands), strands::contains);
    }

    /** The moves of a strand on a day and later; no document of the change may be earlier. */
    List<StrandMove> of(UUID strand, LocalDate day) {
        return now(kept.strandFrom(strand, day), strand::equals);
    }

    private List<StrandMove> now(List<StrandMove> stored, Predicate<UUID> wanted) {
        Set<UUID> changed = change.ids();
        List<StrandMove> moves = new ArrayList<>(stored);
        moves.removeIf(move -> changed.contains(move.document().id()));
        change.after().stream().filter(move -> wanted.test(move.strand())).forEach(moves::add);
        return moves;
    }
}
