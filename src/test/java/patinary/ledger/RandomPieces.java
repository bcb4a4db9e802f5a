package patinary.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;

/** Where the pieces of a random history stand, so that it sells only what is there. */
final class RandomPieces {

    private static final int MOST_SHARES = 4;

    private final Random random;
    private final List<UUID> known = new ArrayList<>();
    private final List<UUID> inStock = new ArrayList<>();
    private final List<UUID> sold = new ArrayList<>();
    private final Map<UUID, List<UUID>> parts = new HashMap<>();

    RandomPieces(Random random) {
        this.random = random;
    }

    /** A piece that a receipt brings in, or one that it adds cost to, wherever that is by now. */
    UUID newOrKnown() {
        return known.isEmpty() || random.nextInt(4) > 0 ? create() : pick(known);
    }

    /** Pieces that share a use: also sold, joined and broken ones, because what was done to them may be typed in late. */
    List<PieceShare> shares() {
        return IntStream.rangeClosed(0, random.nextInt(MOST_SHARES))
                .mapToObj(i -> newOrKnown())
                .distinct()
                .map(piece -> new PieceShare(piece, BigDecimal.valueOf(random.nextInt(40), 1)))
                .toList();
    }

    Optional<UUID> leave() {
        return inStock.isEmpty() ? Optional.empty() : Optional.of(inStock.remove(random.nextInt(inStock.size())));
    }

    Optional<UUID> sell() {
        Optional<UUID> piece = leave();
        piece.ifPresent(sold::add);
        return piece;
    }

    Optional<UUID> comeBack() {
        if (sold.isEmpty()) {
            return Optional.empty();
        }
        UUID piece = sold.remove(random.nextInt(sold.size()));
        inStock.add(piece);
        return Optional.of(piece);
    }

    /** Joins some into a set, splits one, or breaks a set up into what it was made of. */
    Optional<Move.Regroup> regroup() {
        if (inStock.isEmpty()) {
            return Optional.empty();
        }
        List<UUID> from = IntStream.range(0, Math.min(inStock.size(), 1 + random.nextInt(3)))
                .mapToObj(i -> inStock.remove(random.nextInt(inStock.size())))
                .toList();
        List<UUID> to = new ArrayList<>();
        if (from.size() == 1 && parts.containsKey(from.get(0)) && random.nextInt(3) > 0) {
            to.addAll(parts.remove(from.get(0)));
            inStock.addAll(to);
        } else if (from.size() == 1) {
            splitOff(from.get(0), to);
        } else {
            UUID set = create();
            parts.put(set, from);
            to.add(set);
        }
        List<PieceShare> shares = to.stream()
                .map(piece -> new PieceShare(piece, BigDecimal.valueOf(1L + random.nextInt(9))))
                .toList();
        return Optional.of(new Move.Regroup(from, shares));
    }

    private void splitOff(UUID piece, List<UUID> to) {
        if (random.nextBoolean()) {
            inStock.add(piece);
            to.add(piece);
        }
        to.add(create());
        to.add(create());
    }

    private UUID create() {
        UUID piece = new UUID(random.nextLong(), random.nextLong());
        known.add(piece);
        inStock.add(piece);
        return piece;
    }

    private UUID pick(List<UUID> list) {
        return list.get(random.nextInt(list.size()));
    }
}
