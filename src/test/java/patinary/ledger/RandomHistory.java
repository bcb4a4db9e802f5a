package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
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
import patinary.money.Amount;

/**
 * A made-up history of a shop: whole, balanced documents that can all be carried out, but in any order, with uses before
 * receipts, remembered prices, counts that disagree and pieces that are joined, sold, returned and broken. The same seed
 * and size always give the same history.
 */
final class RandomHistory {

    /** One supply for each place to run short at while another is there. */
    static final List<UUID> SUPPLIES = List.of(Story.name("paint"), Story.name("paper"), Story.name("wax"));

    /** Pots that may be mixed, used, or used and never mixed; each is made of supplies and of pots before it. */
    static final List<UUID> POTS = List.of(Story.name("pot 1"), Story.name("pot 2"), Story.name("pot 3"));

    private static final List<UUID> AT_THE_BENCH =
            Stream.concat(SUPPLIES.stream(), POTS.stream()).toList();

    private static final LocalDate FIRST = LocalDate.of(2025, 11, 15);
    private static final int DAYS = 60;
    private static final List<DocumentKind> KINDS = List.of(
            DocumentKind.OPENING,
            DocumentKind.RECEIPT,
            DocumentKind.RECEIPT,
            DocumentKind.RECEIPT,
            DocumentKind.SUPPLIER_RETURN,
            DocumentKind.TAKING,
            DocumentKind.BENCH_ENTRY,
            DocumentKind.BENCH_ENTRY,
            DocumentKind.BENCH_ENTRY,
            DocumentKind.COUNT,
            DocumentKind.COUNT,
            DocumentKind.SALE,
            DocumentKind.SALE,
            DocumentKind.REFUND,
            DocumentKind.REGROUPING,
            DocumentKind.EXPENSE,
            DocumentKind.LETTING_GO);

    private final String name;
    private final Random random;
    private final RandomPieces pieces;
    private final List<RetailSale> retailSales = new ArrayList<>();
    private final Map<UUID, UUID> pieceSales = new HashMap<>();
    private final Set<UUID> mixed = new HashSet<>();
    private final List<DocumentMoves> documents;

    /** How much of a supply a sale took that has not come back. */
    private record RetailSale(UUID sale, UUID supply, BigDecimal quantity) {}

    private RandomHistory(long seed, int size) {
        name = "seed " + seed + ", " + size + " documents";
        random = new Random(seed);
        pieces = new RandomPieces(random);
        List<DocumentRef> refs =
                IntStream.range(0, size).mapToObj(i -> randomRef()).sorted().toList();
        documents = refs.stream()
                .map(ref -> new DocumentMoves(ref, moves(ref)))
                .filter(document -> !document.moves().isEmpty())
                .toList();
    }

    static RandomHistory of(long seed, int size) {
        return new RandomHistory(seed, size);
    }

    /** All documents, in canonical order. */
    List<DocumentMoves> documents() {
        return documents;
    }

    /** The same documents in an order in which somebody may have typed them in. */
    List<DocumentMoves> shuffled(long seed) {
        List<DocumentMoves> result = new ArrayList<>(documents);
        Collections.shuffle(result, new Random(seed));
        return result;
    }

    List<LocalDate> dates() {
        return documents.stream().map(d -> d.document().date()).distinct().toList();
    }

    List<DocumentMoves> upTo(LocalDate date) {
        return documents.stream()
                .filter(d -> !d.document().date().isAfter(date))
                .toList();
    }

    @Override
    public String toString() {
        return name + documents.stream().map(d -> "\n  " + d).reduce("", String::concat);
    }

    private DocumentRef randomRef() {
        DocumentKind kind = pick(KINDS);
        LocalDate date = FIRST.plusDays(random.nextInt(DAYS));
        return new DocumentRef(new UUID(random.nextLong(), random.nextLong()), kind, date);
    }

    private List<Move> moves(DocumentRef ref) {
        return switch (ref.kind()) {
            case OPENING -> broughtIn(Account.OPENING);
            case RECEIPT -> broughtIn(pick(List.of(Account.MONEY, Account.PAYABLE, Account.OWNER_IN)));
            case SUPPLIER_RETURN -> returnedToSupplier();
            case TAKING -> List.of(out(StockPlace.SHELF, chance(2), new Destination.Place(StockPlace.BENCH)));
            case BENCH_ENTRY -> chance(2) ? mix() : benchEntry();
            case COUNT -> counted();
            case SALE -> sale(ref);
            case REFUND -> refund();
            case REGROUPING -> pieces.regroup().<List<Move>>map(List::of).orElse(List.of());
            case LETTING_GO -> letGo();
            default -> fixed(Account.EXPENSE, Account.MONEY, amount());
        };
    }

    private List<Move> broughtIn(Account other) {
        List<Move> moves = new ArrayList<>();
        Amount total = Amount.ZERO;
        for (int line = random.nextInt(3); line >= 0; line--) {
            Amount cost = amount();
            total = total.plus(cost);
            moves.add(chance(3) ? new Move.PieceIn(pieces.newOrKnown(), cost, chance(4)) : supplyIn(cost));
        }
        Amount forHome = amount();
        moves.addAll(fixed(Account.OWNER_OUT, other, forHome));
        moves.add(new Move.Post(other, Tags.NONE, total.negated()));
        return moves;
    }

    private Move supplyIn(Amount cost) {
        return new Move.SupplyIn(pick(SUPPLIES), pick(StockPlace.values()), quantity(), cost, chance(4));
    }

    private List<Move> returnedToSupplier() {
        List<Move> moves = new ArrayList<>(fixed(Account.MONEY, Account.WRITE_OFFS, amount()));
        moves.add(out(pick(StockPlace.values()), false, new Destination.To(Account.WRITE_OFFS, Tags.category("back"))));
        pieces.leave().ifPresent(piece -> moves.add(new Move.PieceOut(piece, Account.WRITE_OFFS)));
        return moves;
    }

    private List<Move> benchEntry() {
        return IntStream.rangeClosed(0, random.nextInt(3))
                .<Move>mapToObj(line -> out(StockPlace.BENCH, chance(2), new Destination.Pieces(pieces.shares())))
                .toList();
    }

    /** One pot of several ingredients on several pieces; some of it is kept, and made with some of an earlier pot. */
    private List<Move> mix() {
        int number = random.nextInt(POTS.size());
        UUID pot = POTS.get(number);
        if (!mixed.add(pot)) {
            return benchEntry();
        }
        List<Move> moves = new ArrayList<>();
        Destination to =
                new Destination.Mix(chance(4) ? List.of() : pieces.shares(), List.of(new PotShare(pot, quantity())));
        for (int line = random.nextInt(3); line >= 0; line--) {
            UUID ingredient = number > 0 && chance(3) ? POTS.get(random.nextInt(number)) : pick(SUPPLIES);
            moves.add(new Move.SupplyOut(ingredient, StockPlace.BENCH, quantity(), chance(2), to));
        }
        moves.add(random.nextInt(moves.size() + 1), new Move.Mixed(pot, quantity()));
        return moves;
    }

    private List<Move> counted() {
        StockPlace place = pick(StockPlace.values());
        UUID supply = pick(place == StockPlace.BENCH ? AT_THE_BENCH : SUPPLIES);
        return List.of(new Move.Counted(supply, place, countedQuantity(), chance(3)));
    }

    private List<Move> sale(DocumentRef ref) {
        List<Move> moves = new ArrayList<>(fixed(Account.MONEY, Account.SALES, amount()));
        for (int line = random.nextInt(3); line > 0; line--) {
            pieces.sell().ifPresent(piece -> {
                moves.add(new Move.PieceOut(piece, Account.COST_OF_PIECES));
                pieceSales.put(piece, ref.id());
            });
        }
        if (chance(2)) {
            Move.SupplyOut retail = out(StockPlace.SHELF, false, new Destination.To(Account.COST_OF_RETAIL, Tags.NONE));
            moves.add(retail);
            retailSales.add(new RetailSale(ref.id(), retail.supply(), retail.quantity()));
        }
        return moves;
    }

    private List<Move> refund() {
        List<Move> moves = new ArrayList<>(fixed(Account.REFUNDS, Account.MONEY, amount()));
        pieces.comeBack().ifPresent(piece -> moves.add(new Move.PieceBack(piece, pieceSales.get(piece))));
        if (!retailSales.isEmpty()) {
            RetailSale sale = retailSales.remove(random.nextInt(retailSales.size()));
            BigDecimal part = chance(2) ? sale.quantity() : sale.quantity().min(quantity());
            moves.add(new Move.SupplyBack(sale.supply(), StockPlace.SHELF, part, sale.sale()));
            BigDecimal rest = sale.quantity().subtract(part);
            if (rest.signum() > 0) {
                retailSales.add(new RetailSale(sale.sale(), sale.supply(), rest));
            }
        }
        return moves;
    }

    private List<Move> letGo() {
        Account to = pick(List.of(Account.WRITE_OFFS, Account.OWN_USE));
        return Stream.concat(
                        pieces.leave().stream().map(piece -> (Move) new Move.PieceOut(piece, to)),
                        chance(2)
                                ? Stream.of(out(StockPlace.BENCH, chance(2), new Destination.To(to, Tags.NONE)))
                                : Stream.<Move>of())
                .toList();
    }

    private static List<Move> fixed(Account debit, Account credit, Amount amount) {
        return List.of(new Move.Post(debit, Tags.NONE, amount), new Move.Post(credit, Tags.NONE, amount.negated()));
    }

    private Move.SupplyOut out(StockPlace place, boolean estimated, Destination to) {
        UUID supply = pick(place == StockPlace.BENCH ? AT_THE_BENCH : SUPPLIES);
        return new Move.SupplyOut(supply, place, quantity(), estimated, to);
    }

    /** Above zero, with up to three decimals. */
    private BigDecimal quantity() {
        int scale = random.nextInt(4);
        return BigDecimal.valueOf(1L + random.nextInt(9 * (int) Math.pow(10, scale)), scale);
    }

    private BigDecimal countedQuantity() {
        return chance(4) ? BigDecimal.ZERO : quantity();
    }

    /** Mostly a few units of money, now and then a few cents or nothing at all. */
    private Amount amount() {
        return Amount.of(chance(5) ? random.nextInt(4) : random.nextInt(5_000));
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
