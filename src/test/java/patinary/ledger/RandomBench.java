package patinary.ledger;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import patinary.ledger.Move.Destination;

/** What a random history does with supplies: uses, cuts, pots and cups, what is kept of them, and counts. */
final class RandomBench {

    /** Pots that may be mixed, used, or used and never mixed; each is made of supplies and of pots before it. */
    static final List<UUID> POTS = List.of(Story.name("pot 1"), Story.name("pot 2"), Story.name("pot 3"));

    /** A tool that wears: each use takes a fortieth, a third or all of one, and some go beyond what is there. */
    static final UUID BRUSH = Story.name("brush");

    private static final List<BigDecimal> ONE_USE =
            Stream.of("0.025", "0.33333333333334", "0.1").map(BigDecimal::new).toList();

    private static final List<UUID> AT_THE_BENCH =
            Stream.concat(RandomSupplies.SUPPLIES.stream(), POTS.stream()).toList();

    private final Random random;
    private final RandomPieces pieces;
    private final RandomSupplies supplies;
    private final Set<UUID> mixed = new HashSet<>();

    RandomBench(Random random, RandomPieces pieces, RandomSupplies supplies) {
        this.random = random;
        this.pieces = pieces;
        this.supplies = supplies;
    }

    List<Move> entry(DocumentRef ref) {
        List<Move> moves = new ArrayList<>(chance(2) ? mix(ref) : plainEntry(ref));
        if (chance(2)) {
            moves.add(worn());
        }
        return moves;
    }

    private Move worn() {
        Destination to = chance(6)
                ? new Destination.To(Account.WRITE_OFFS, Tags.category("waste"))
                : new Destination.Pieces(pieces.shares());
        BigDecimal quantity = pick(ONE_USE).multiply(BigDecimal.valueOf(1L + random.nextInt(3)));
        return new Move.SupplyOut(BRUSH, StockPlace.BENCH, quantity, !chance(4), to, true);
    }

    /** Each use on pieces of its own, now and then on none: a sample, or spilt. */
    private List<Move> plainEntry(DocumentRef ref) {
        return IntStream.rangeClosed(0, random.nextInt(3))
                .<Move>mapToObj(line -> out(
                        ref,
                        StockPlace.BENCH,
                        chance(2),
                        chance(6)
                                ? new Destination.To(Account.WRITE_OFFS, Tags.category("waste"))
                                : new Destination.Pieces(pieces.shares())))
                .toList();
    }

    /**
     * One pot of several ingredients on several pieces, and some of it poured into a cup with something of its own; some of
     * the pot may be kept, and it may be made with some of an earlier one.
     */
    private List<Move> mix(DocumentRef ref) {
        int number = random.nextInt(POTS.size());
        UUID pot = POTS.get(number);
        List<PieceShare> cup = chance(3) ? pieces.shares() : List.of();
        boolean isKept = chance(3) ? false : mixed.add(pot);
        List<PieceShare> on = isKept && chance(4) ? cup : distinct(pieces.shares(), cup);
        Destination to = isKept
                ? new Destination.Mix(on, List.of(new PotShare(pot, supplies.plain())))
                : new Destination.Pieces(on);
        List<Move> moves = new ArrayList<>();
        for (int line = random.nextInt(3); line >= 0; line--) {
            UUID ingredient = number > 0 && chance(3) ? POTS.get(random.nextInt(number)) : supplies.any();
            moves.add(new Move.SupplyOut(
                    ingredient, StockPlace.BENCH, supplies.used(ingredient, ref.date()), chance(2), to));
        }
        if (!cup.isEmpty()) {
            moves.add(out(ref, StockPlace.BENCH, chance(2), new Destination.Pieces(cup)));
        }
        if (isKept) {
            moves.add(random.nextInt(moves.size() + 1), new Move.Mixed(pot, supplies.plain()));
        }
        return moves;
    }

    private static List<PieceShare> distinct(List<PieceShare> pot, List<PieceShare> cup) {
        Map<UUID, PieceShare> byPiece = new HashMap<>();
        Stream.concat(pot.stream(), cup.stream()).forEach(share -> byPiece.putIfAbsent(share.piece(), share));
        return PieceShare.canonical(List.copyOf(byPiece.values()));
    }

    List<Move> counted(DocumentRef ref) {
        StockPlace place = pick(StockPlace.values());
        UUID supply = chance(6) ? BRUSH : pick(place == StockPlace.BENCH ? AT_THE_BENCH : RandomSupplies.SUPPLIES);
        BigDecimal quantity = chance(4) ? BigDecimal.ZERO : supplies.used(supply, ref.date());
        return List.of(new Move.Counted(supply, place, quantity, chance(3)));
    }

    Move.SupplyOut out(DocumentRef ref, StockPlace place, boolean estimated, Destination to) {
        UUID supply = pick(place == StockPlace.BENCH ? AT_THE_BENCH : RandomSupplies.SUPPLIES);
        return new Move.SupplyOut(supply, place, supplies.used(supply, ref.date()), estimated, to);
    }

    private boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private <T> T pick(T[] array) {
        return array[random.nextInt(array.length)];
    }
}
