package patinary.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import patinary.ledger.StrandMove.Step;
import patinary.money.Amount;

/**
 * Some supplies followed by themselves, and what each of their moves from a document on gives:
 * postings, and cost for pieces, whichever account that will land on.
 */
final class SupplyRun {

    /** What a move of a supply gives. */
    sealed interface Event {

        record Posted(Entry entry) implements Event {}

        record Delivered(UUID piece, Amount amount, Tags tags) implements Event {}
    }

    private final Map<Step, List<Event>> events = new HashMap<>();
    private final Journal journal = new Journal();
    private final SupplyBooks supplies;
    private final Carrying carrying;
    private List<Event> current = new ArrayList<>();

    private SupplyRun(StockMethod method, Carried.Rule rule) {
        supplies = new SupplyBooks(method, journal, (piece, amount, tags) -> {
            takePosted();
            current.add(new Event.Delivered(piece, amount, tags));
        });
        carrying = new Carrying(rule, supplies);
    }

    /**
     * @param begun what was carried forward of supplies that are not followed from their first move
     * @param moves the moves of all supplies from there on, in canonical order
     * @param from what is before this document is followed without being told
     */
    static SupplyRun of(
            StockMethod method, List<Carried> begun, List<StrandMove> moves, DocumentRef from, Carried.Rule rule) {
        SupplyRun run = new SupplyRun(method, rule);
        begun.forEach(run.supplies::restore);
        moves.forEach(move -> run.follow(move, move.document().compareTo(from) >= 0));
        return run;
    }

    private void follow(StrandMove move, boolean told) {
        carrying.before(move);
        current = new ArrayList<>();
        journal.open(move.document());
        journal.move(move.number());
        supplies.carryOut(move.move());
        takePosted();
        if (told) {
            events.put(move.step(), current);
        }
    }

    private void takePosted() {
        journal.take().forEach(entry -> current.add(new Event.Posted(entry)));
    }

    /** What was carried forward on the way. */
    List<Carried> carried() {
        return carrying.carried();
    }

    List<Event> at(Step step) {
        return events.getOrDefault(step, List.of());
    }

    /** The pieces that something was delivered to. */
    Set<UUID> pieces() {
        Set<UUID> pieces = new HashSet<>();
        events.values()
                .forEach(list -> list.forEach(event -> {
                    if (event instanceof Event.Delivered delivered) {
                        pieces.add(delivered.piece());
                    }
                }));
        return pieces;
    }

    List<Problem> problems() {
        return journal.problems();
    }

    List<Replay.Uncosted> uncosted() {
        return supplies.uncosted();
    }
}
