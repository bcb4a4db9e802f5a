package patinary.ledger;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * The landed cost of each piece and where it stands: in stock, on the account it left to, or inside other pieces. Cost
 * that reaches a piece after it left follows it, so that nothing is ever posted into the past.
 */
final class PieceBook implements PieceCosts {

    private static final class State {
        private Account account = Account.PIECES;
        private @Nullable String category;
        private @Nullable UUID takenBy;
        private List<PieceShare> partOf = List.of();
        private Amount exact = Amount.ZERO;
        private Amount estimated = Amount.ZERO;

        boolean gone() {
            return account != Account.PIECES || !partOf.isEmpty();
        }

        void add(Amount amount, boolean isEstimated) {
            if (isEstimated) {
                estimated = estimated.plus(amount);
            } else {
                exact = exact.plus(amount);
            }
        }
    }

    private final Map<UUID, State> states = new HashMap<>();
    private final Journal journal;

    PieceBook(Journal journal) {
        this.journal = journal;
    }

    /** Adds cost to a piece, wherever it is now; one-sided. */
    @Override
    public void in(UUID piece, Amount amount, Tags tags) {
        State state = state(piece);
        if (!state.partOf.isEmpty()) {
            pass(piece, amount, state.partOf, tags);
            return;
        }
        state.add(amount, tags.estimated());
        journal.post(state.account, tags.withPiece(piece).withCategory(state.category), amount);
    }

    /** Passes cost on to what the piece was made part of; told is the piece that it was meant for in the first place. */
    private void pass(UUID piece, Amount amount, List<PieceShare> partOf, Tags tags) {
        boolean first = !journal.isMeantElsewhere();
        if (first) {
            journal.meant(piece);
        }
        share(amount, partOf, tags);
        if (first) {
            journal.meant(null);
        }
    }

    /** Shares cost over pieces; one-sided. */
    private void share(Amount amount, List<PieceShare> shares, Tags tags) {
        List<Amount> parts =
                Shares.split(amount, shares.stream().map(PieceShare::weight).toList());
        for (int i = 0; i < parts.size(); i++) {
            in(shares.get(i).piece(), parts.get(i), tags);
        }
    }

    /** Follows a move of pieces. */
    void carryOut(Move move) {
        if (move instanceof Move.PieceIn in) {
            in(in.piece(), in.cost(), Tags.NONE.withEstimated(in.estimated()));
        } else if (move instanceof Move.PieceOut out) {
            out(out);
        } else if (move instanceof Move.PieceBack back) {
            back(back);
        } else if (move instanceof Move.Regroup regroup) {
            regroup(regroup.from(), regroup.to());
        }
    }

    private void out(Move.PieceOut move) {
        State state = state(move.piece());
        if (state.gone()) {
            journal.problem(Problem.Reason.PIECE_ALREADY_GONE, move.piece());
            return;
        }
        transfer(move.piece(), state, move.to(), move.category());
    }

    /** Only out of the sale that took it: a piece sold again meanwhile belongs to its newer sale. */
    private void back(Move.PieceBack move) {
        State state = state(move.piece());
        if (state.account != Account.COST_OF_PIECES || !move.sale().equals(state.takenBy)) {
            journal.problem(Problem.Reason.PIECE_NOT_SOLD, move.piece());
            return;
        }
        transfer(move.piece(), state, Account.PIECES, null);
    }

    /** Refuses before it touches anything: a regrouping done by halves would lose cost. */
    private void regroup(List<UUID> from, List<PieceShare> to) {
        if (anyGone(from, to)) {
            return;
        }
        Amount exact = Amount.ZERO;
        Amount estimated = Amount.ZERO;
        for (UUID piece : from) {
            State state = state(piece);
            exact = exact.plus(state.exact);
            estimated = estimated.plus(state.estimated);
            empty(piece, state);
            if (to.stream().noneMatch(share -> share.piece().equals(piece))) {
                state.partOf = to;
            }
        }
        to.forEach(share -> state(share.piece()).partOf = List.of());
        share(exact, to, Tags.NONE);
        share(estimated, to, Tags.NONE.withEstimated(true));
    }

    /** A piece inside another may come out again, but one that left the shop cannot. */
    private boolean anyGone(List<UUID> from, List<PieceShare> to) {
        List<UUID> gone = Stream.concat(
                        from.stream().filter(piece -> state(piece).gone()),
                        to.stream().map(PieceShare::piece).filter(piece -> state(piece).account != Account.PIECES))
                .distinct()
                .toList();
        gone.forEach(piece -> journal.problem(Problem.Reason.PIECE_ALREADY_GONE, piece));
        return !gone.isEmpty();
    }

    private void transfer(UUID piece, State state, Account to, @Nullable String category) {
        Tags before = Tags.piece(piece).withCategory(state.category);
        Tags after = Tags.piece(piece).withCategory(category);
        journal.post(state.account, before, state.exact.negated());
        journal.post(state.account, before.withEstimated(true), state.estimated.negated());
        journal.post(to, after, state.exact);
        journal.post(to, after.withEstimated(true), state.estimated);
        state.account = to;
        state.category = category;
        state.takenBy = journal.document().id();
    }

    private void empty(UUID piece, State state) {
        journal.post(Account.PIECES, Tags.piece(piece), state.exact.negated());
        journal.post(Account.PIECES, Tags.piece(piece).withEstimated(true), state.estimated.negated());
        state.exact = Amount.ZERO;
        state.estimated = Amount.ZERO;
    }

    private State state(UUID piece) {
        return states.computeIfAbsent(piece, p -> new State());
    }

    /** Takes over what a piece cost so far, where its moves were followed without knowing all that it cost. */
    void restore(UUID piece, Amount exact, Amount estimated) {
        State state = state(piece);
        state.exact = exact;
        state.estimated = estimated;
    }

    /** Landed cost now in stock, by piece; for checks. */
    Map<UUID, Amount> inStock() {
        Map<UUID, Amount> result = new HashMap<>();
        states.forEach((piece, state) -> {
            if (state.account == Account.PIECES && state.partOf.isEmpty()) {
                result.put(piece, state.exact.plus(state.estimated));
            }
        });
        return result;
    }
}
