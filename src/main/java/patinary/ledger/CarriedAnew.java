package patinary.ledger;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.UUID;

/** What is to be carried forward of a supply to some days, worked out from its first move on: the definition of what is kept of it. */
final class CarriedAnew {

    private CarriedAnew() {}

    /**
     * Only as long as the supply is tied to no pot, which is all that is asked of what is carried forward.
     *
     * @param moves all moves of the supply
     * @param kept what is kept of it, of which the days are taken
     * @param most how many uses since the last count at most
     */
    static List<Carried> of(
            StockMethod method, UUID supply, Collection<StrandMove> moves, Collection<Carried> kept, int most) {
        Journal journal = new Journal();
        SupplyBooks books = new SupplyBooks(method, journal, (piece, amount, tags) -> {});
        Deque<StrandMove> open =
                new ArrayDeque<>(moves.stream().sorted(StrandMove.CANONICAL).toList());
        List<Carried> anew = new ArrayList<>();
        kept.stream().map(Carried::day).sorted().forEach(day -> {
            while (!open.isEmpty() && open.getFirst().document().date().isBefore(day)) {
                StrandMove move = open.removeFirst();
                journal.open(move.document());
                books.carryOut(move.move());
                journal.take();
            }
            anew.add(books.carried(supply, day, most));
        });
        return anew;
    }
}
