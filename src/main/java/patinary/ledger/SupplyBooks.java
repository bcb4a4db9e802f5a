package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import patinary.ledger.Move.Destination;
import patinary.money.Amount;

/** All supplies at both places, and what each document took of them. */
final class SupplyBooks {

    private record Key(UUID supply, StockPlace place) {}

    private record Taking(UUID document, Key key) {}

    private final Map<Key, SupplyBook> books = new HashMap<>();
    private final Map<Taking, List<Use>> takings = new HashMap<>();
    private final Pots pots = new Pots();
    private final StockMethod method;
    private final Journal journal;
    private final PieceCosts pieces;

    SupplyBooks(StockMethod method, Journal journal, PieceCosts pieces) {
        this.method = method;
        this.journal = journal;
        this.pieces = pieces;
    }

    Journal journal() {
        return journal;
    }

    SupplyBook at(UUID supply, StockPlace place) {
        return books.computeIfAbsent(new Key(supply, place), k -> new SupplyBook(supply, place, method, this));
    }

    void restore(Carried carried) {
        carried.places().forEach(place -> at(carried.supply(), place.place()).restore(place));
    }

    /** How many uses of a supply wait for a receipt. */
    int waiting(UUID supply) {
        return seen(supply).mapToInt(book -> book.waiting().size()).sum();
    }

    private Stream<SupplyBook> seen(UUID supply) {
        return Arrays.stream(StockPlace.values())
                .map(place -> books.get(new Key(supply, place)))
                .filter(Objects::nonNull);
    }

    /** What there is of a supply now, at the beginning of a day; of uses since the last count at most so many. */
    Carried carried(UUID supply, LocalDate day, int most) {
        return new Carried(
                supply, day, seen(supply).map(book -> book.carried(most)).toList());
    }

    /** Follows a move of supplies. */
    void carryOut(Move move) {
        if (move instanceof Move.SupplyIn in) {
            at(in.supply(), in.place()).bring(in.quantity(), in.cost(), Tags.NONE.withEstimated(in.estimated()));
        } else if (move instanceof Move.SupplyOut out) {
            take(out);
        } else if (move instanceof Move.SupplyBack back) {
            back(back);
        } else if (move instanceof Move.Mixed mixed) {
            at(mixed.pot(), StockPlace.BENCH).bring(mixed.quantity(), Amount.ZERO, Tags.NONE);
        } else if (move instanceof Move.Counted counted) {
            at(counted.supply(), counted.place()).count(counted.quantity(), counted.waste());
        }
    }

    private void take(Move.SupplyOut move) {
        if (!pots.mayTake(move)) {
            journal.problem(Problem.Reason.POT_OF_ITSELF, move.supply());
            return;
        }
        Use use = at(move.supply(), move.place()).take(move);
        takings.computeIfAbsent(
                        new Taking(journal.document().id(), new Key(move.supply(), move.place())),
                        t -> new ArrayList<>())
                .add(use);
    }

    private void back(Move.SupplyBack move) {
        Taking taking = new Taking(move.sale(), new Key(move.supply(), move.place()));
        at(move.supply(), move.place()).back(move.quantity(), takings.getOrDefault(taking, List.of()));
    }

    /** Brings the cost of a use to where the use went; one-sided. */
    void deliver(Use use, Amount cost, Tags tags) {
        Destination to = use.move().to();
        if (to instanceof Destination.Pieces on) {
            deliver(use.charge(cost, weights(on.shares())), on.shares(), List.of(), tags);
        } else if (to instanceof Destination.Mix mix) {
            List<BigDecimal> weights = new ArrayList<>(weights(mix.pieces()));
            mix.pots().forEach(share -> weights.add(share.weight()));
            deliver(use.charge(cost, weights), mix.pieces(), mix.pots(), tags);
        } else if (to instanceof Destination.Place other) {
            use.charge(cost);
            at(use.move().supply(), other.place()).reprice(cost, tags);
        } else if (to instanceof Destination.To out) {
            use.charge(cost);
            Tags there = out.tags()
                    .withSupply(use.move().supply())
                    .withOrigin(tags.origin())
                    .withEstimated(tags.estimated());
            journal.post(out.account(), there, cost);
        }
    }

    private void deliver(List<Amount> changes, List<PieceShare> on, List<PotShare> aside, Tags tags) {
        for (int i = 0; i < on.size(); i++) {
            pieces.in(on.get(i).piece(), changes.get(i), tags);
        }
        for (int i = 0; i < aside.size(); i++) {
            Amount change = changes.get(on.size() + i);
            if (!change.isZero()) {
                at(aside.get(i).pot(), StockPlace.BENCH).reprice(change, tags);
            }
        }
    }

    private static List<BigDecimal> weights(List<PieceShare> shares) {
        return shares.stream().map(PieceShare::weight).toList();
    }

    List<Replay.StockLeft> left() {
        return books.entrySet().stream()
                .map(entry -> new Replay.StockLeft(
                        entry.getKey().supply(),
                        entry.getKey().place(),
                        entry.getValue().bookQuantity(),
                        entry.getValue().cost()))
                .toList();
    }

    /** What waits itself, then what was made with a pot in which something waits. */
    List<Replay.Uncosted> uncosted() {
        List<Use> waiting =
                books.values().stream().flatMap(book -> book.waiting().stream()).toList();
        return Stream.concat(
                        waiting.stream().map(use -> uncosted(use, use.waiting(), false)),
                        throughPots(waiting).stream().map(use -> uncosted(use, use.costed(), true)))
                .toList();
    }

    /** Follows what has no cost into the pots that it was mixed into, and on into what these were used for. */
    private Set<Use> throughPots(List<Use> waiting) {
        Set<Use> result = new LinkedHashSet<>();
        Deque<Use> open = new ArrayDeque<>(waiting);
        while (!open.isEmpty()) {
            if (open.pop().move().to() instanceof Destination.Mix mix) {
                mix.pots().stream()
                        .filter(share -> share.weight().signum() > 0)
                        .flatMap(share -> at(share.pot(), StockPlace.BENCH).uses().stream())
                        .filter(use -> use.costed().signum() > 0)
                        .filter(result::add)
                        .forEach(open::push);
            }
        }
        return result;
    }

    private static Replay.Uncosted uncosted(Use use, BigDecimal quantity, boolean throughPot) {
        return new Replay.Uncosted(
                use.document(), use.move().supply(), use.move().place(), quantity, throughPot);
    }
}
