package patinary.covering;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import patinary.money.Amount;

/**
 * Looks for the movements that a payout covers: those which add up exactly to what left the balance. First everything up to a
 * day, then everything between two days, then everything up to a day with one or two left out or added. It looks at the latest
 * movements only and stops at a few answers, so it always ends soon; and since different movements may add up to the same by
 * chance, nothing that it finds is taken without being asked.
 */
final class FitSearch {

    /** More answers than these help nobody. */
    static final int MOST = 5;

    /** The latest movements that are looked at. */
    static final int POOL = 400;

    /** The latest days up to which everything, but one or two, is tried. */
    private static final int CUTS = 31;

    private final List<Movement> all;
    private final long target;
    private final long[] upTo;
    private final List<Fit> found = new ArrayList<>();

    private FitSearch(List<Movement> all, long target) {
        this.all = all;
        this.target = target;
        upTo = new long[all.size() + 1];
        for (int i = 0; i < all.size(); i++) {
            upTo[i + 1] = upTo[i] + all.get(i).amountMinor();
        }
    }

    /**
     * The answers, the plainest first.
     *
     * @param open movements that no payout covers, in any order
     * @param day the day of the payout; later movements are no part of it
     * @param out what left the balance, with the fee
     */
    static List<Fit> of(List<Movement> open, LocalDate day, Amount out) {
        List<Movement> before = open.stream()
                .filter(movement -> !movement.docDate().isAfter(day))
                .sorted(Comparator.comparing(Movement::docDate)
                        .thenComparing(movement -> movement.documentId().toString()))
                .toList();
        FitSearch search = new FitSearch(before.subList(Math.max(0, before.size() - POOL), before.size()), out.minor());
        search.runs();
        search.nearly();
        return List.copyOf(search.found);
    }

    /** Whole days from one to another; those from the first open day on come first. */
    private void runs() {
        for (int from = 0; from < all.size() && !isEnough(); from++) {
            if (!beginsDay(from)) {
                continue;
            }
            for (int to = all.size(); to > from && !isEnough(); to--) {
                if (endsDay(to) && upTo[to] - upTo[from] == target) {
                    add(from, to, List.of());
                }
            }
        }
    }

    /** Everything up to a day, but one or two. */
    private void nearly() {
        int cuts = 0;
        for (int to = all.size(); to > 0 && cuts < CUTS && !isEnough(); to--) {
            if (endsDay(to)) {
                cuts++;
                nearly(to, upTo[to] - target);
            }
        }
    }

    private void nearly(int to, long over) {
        for (int i = 0; i < all.size() && !isEnough(); i++) {
            if (weight(i, to) == over) {
                add(0, to, List.of(i));
            }
        }
        Map<Long, List<Integer>> seen = new HashMap<>();
        for (int i = 0; i < all.size() && !isEnough(); i++) {
            for (int other : seen.getOrDefault(over - weight(i, to), List.of())) {
                if (!isEnough()) {
                    add(0, to, List.of(other, i));
                }
            }
            seen.computeIfAbsent(weight(i, to), w -> new ArrayList<>()).add(i);
        }
    }

    /** By how much the sum falls where a movement up to the cut is left out, or one after it added. */
    private long weight(int i, int to) {
        long amount = all.get(i).amountMinor();
        return i < to ? amount : -amount;
    }

    private void add(int from, int to, List<Integer> turned) {
        List<Movement> covered = new ArrayList<>();
        List<Movement> leftOut = new ArrayList<>();
        List<Movement> added = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            boolean within = i >= from && i < to;
            boolean isTurned = turned.contains(i);
            if (within != isTurned) {
                covered.add(all.get(i));
            }
            if (isTurned) {
                (within ? leftOut : added).add(all.get(i));
            }
        }
        Fit fit = new Fit(covered, all.get(from).docDate(), all.get(to - 1).docDate(), leftOut, added);
        if (!covered.isEmpty()
                && found.stream().noneMatch(known -> known.documents().equals(fit.documents()))) {
            found.add(fit);
        }
    }

    private boolean beginsDay(int i) {
        return i == 0 || !all.get(i).docDate().equals(all.get(i - 1).docDate());
    }

    private boolean endsDay(int to) {
        return to == all.size() || beginsDay(to);
    }

    private boolean isEnough() {
        return found.size() >= MOST;
    }
}
