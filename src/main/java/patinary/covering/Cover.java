package patinary.covering;

import java.util.List;
import patinary.money.Amount;

/**
 * Whether what a payout is said to cover adds up to what left the balance, by the books as they are now. A movement that was
 * changed counts with what it is now; one that was removed is gone from the sum; one dated after the payout cannot have been
 * in it.
 */
record Cover(PayoutFacts payout, List<Part> parts) {

    /** How a payout stands. */
    enum State {
        /** Nothing is said yet. */
        OPEN,
        MATCHED,
        /** It does not add up. */
        DIFFERENT;

        /** The end of its message key. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    public boolean isSaid() {
        return payout.totalMinor() != null;
    }

    /** What its movements come to now. */
    public Amount covered() {
        return Movement.sum(parts.stream().map(Part::movement).toList());
    }

    /** What left the balance beyond what it covers; below zero where it covers more. */
    public Amount difference() {
        return payout.out().minus(covered());
    }

    /** What removed movements came to. */
    public Amount removed() {
        Long total = payout.totalMinor();
        return total == null
                ? Amount.ZERO
                : Amount.of(total - parts.stream().mapToLong(Part::saidMinor).sum());
    }

    public List<Part> changed() {
        return parts.stream().filter(Part::isChanged).toList();
    }

    /** Covered, but dated after the payout by now. */
    public List<Part> late() {
        return parts.stream()
                .filter(part -> part.movement().docDate().isAfter(payout.docDate()))
                .toList();
    }

    public State state() {
        if (!isSaid()) {
            return State.OPEN;
        }
        boolean adds = difference().isZero() && removed().isZero() && late().isEmpty();
        return adds ? State.MATCHED : State.DIFFERENT;
    }
}
