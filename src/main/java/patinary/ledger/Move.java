package patinary.ledger;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What a document does to the books, before costing has put a price on it. A document's posting rule is a pure function
 * from the document to its moves; {@link Replay} turns the moves of all documents, in canonical order, into postings.
 */
public sealed interface Move {

    /** A fixed amount on an account. The fixed amounts of a document balance its one-sided moves. */
    record Post(Account account, Tags tags, Amount amount) implements Move {
        public Post {
            if (account.bearsPieces() && tags.piece() != null) {
                throw new IllegalArgumentException("What pieces cost is posted by their own moves alone");
            }
        }
    }

    /** A supply comes in at a cost: one side only, the document posts the other. */
    record SupplyIn(UUID supply, StockPlace place, BigDecimal quantity, Amount cost, boolean estimated)
            implements Move {}

    /**
     * A supply goes out at whatever the shop's method says it cost; both sides.
     *
     * @param wears whether it is the wear of a tool: no more is taken than there is, and what goes beyond costs nothing
     */
    record SupplyOut(
            UUID supply, StockPlace place, BigDecimal quantity, boolean estimated, Destination to, boolean wears)
            implements Move {
        public SupplyOut(UUID supply, StockPlace place, BigDecimal quantity, boolean estimated, Destination to) {
            this(supply, place, quantity, estimated, to, false);
        }

        /** The same of a tool of which no more than this is left. */
        SupplyOut atMost(BigDecimal left) {
            return new SupplyOut(supply, place, quantity.min(left), estimated, to, wears);
        }
    }

    /** A supply sold earlier comes back at the cost with which that sale took it out; both sides. */
    record SupplyBack(UUID supply, StockPlace place, BigDecimal quantity, UUID sale) implements Move {}

    /** Cost is added to a piece: one side only, the document posts the other. */
    record PieceIn(UUID piece, Amount cost, boolean estimated) implements Move {}

    /**
     * A piece leaves with all its landed cost; both sides.
     *
     * @param category tells why on accounts that pieces leave to for several reasons, or null
     */
    record PieceOut(UUID piece, Account to, @Nullable String category) implements Move {
        public PieceOut(UUID piece, Account to) {
            this(piece, to, null);
        }
    }

    /** A piece that a sale took comes back with its landed cost; both sides. */
    record PieceBack(UUID piece, UUID sale) implements Move {}

    /** Pieces are joined into, or split from, others: their landed cost is shared anew; both sides. */
    record Regroup(List<UUID> from, List<PieceShare> to) implements Move {
        public Regroup {
            to = PieceShare.canonical(to);
        }
    }

    /**
     * A mixed pot is put aside: so much of it comes in. Its cost comes from the uses of the same document that name it, on
     * that day and later; nothing else is posted.
     */
    record Mixed(UUID pot, BigDecimal quantity) implements Move {}

    /**
     * This much of a supply is there; settles what was really used; both sides.
     *
     * @param waste whether what is missing was spilt, dried up or lost, so that no use bears it
     */
    record Counted(UUID supply, StockPlace place, BigDecimal quantity, boolean waste) implements Move {
        public Counted(UUID supply, StockPlace place, BigDecimal quantity) {
            this(supply, place, quantity, false);
        }
    }

    /** This much money is at a place; the difference to the books is short or over; both sides. */
    record MoneyCounted(UUID place, Amount amount) implements Move {}

    /** Where a supply goes. */
    sealed interface Destination {

        /** Into the landed cost of pieces. */
        record Pieces(List<PieceShare> shares) implements Destination {
            public Pieces {
                shares = PieceShare.canonical(shares);
            }
        }

        /** Into the landed cost of pieces, and into pots that were put aside, in proportion to the weights. */
        record Mix(List<PieceShare> pieces, List<PotShare> pots) implements Destination {
            public Mix {
                pieces = PieceShare.canonical(pieces);
                pots = PotShare.canonical(pots);
            }
        }

        /** Out of stock onto an account. */
        record To(Account account, Tags tags) implements Destination {}

        /** To the other place, at cost. */
        record Place(StockPlace place) implements Destination {}
    }
}
