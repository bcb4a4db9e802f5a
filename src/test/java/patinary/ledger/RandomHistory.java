package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import patinary.ledger.Move.Destination;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * A made-up history of a shop: whole, balanced documents that can all be carried out, but in any order, with uses before
 * receipts, remembered prices, cuts, pots and what was kept of them, counts that disagree or found waste, containers
 * that change their size, and pieces that are joined, sold, packed, returned and broken. The same seed and size always give the
 * same history.
 */
final class RandomHistory {

    private static final UUID CASH_BOX = Story.name("cash box");

    /** The category of what sales are packed in. */
    private static final String PACKAGING = "packaging";

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
            DocumentKind.BENCH_ENTRY,
            DocumentKind.COUNT,
            DocumentKind.COUNT,
            DocumentKind.COUNT,
            DocumentKind.COUNT,
            DocumentKind.SALE,
            DocumentKind.SALE,
            DocumentKind.SALE,
            DocumentKind.REFUND,
            DocumentKind.REGROUPING,
            DocumentKind.EXPENSE,
            DocumentKind.TILL_COUNT,
            DocumentKind.LETTING_GO);

    private final String name;
    private final Random random;
    private final RandomPieces pieces;
    private final RandomSupplies supplies;
    private final RandomBench bench;
    private final List<RetailSale> retailSales = new ArrayList<>();
    private final Map<UUID, UUID> pieceSales = new HashMap<>();
    private final List<DocumentMoves> documents;

    /** How much of a supply a sale took that has not come back. */
    private record RetailSale(UUID sale, UUID supply, BigDecimal quantity) {}

    private RandomHistory(long seed, int size) {
        name = "seed " + seed + ", " + size + " documents";
        random = new Random(seed);
        pieces = new RandomPieces(random);
        supplies = new RandomSupplies(random, FIRST, DAYS);
        bench = new RandomBench(random, pieces, supplies);
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

    List<LocalDate> dates() {
        return documents.stream().map(d -> d.document().date()).distinct().toList();
    }

    List<DocumentMoves> upTo(LocalDate date) {
        return documents.stream()
                .filter(d -> !d.document().date().isAfter(date))
                .toList();
    }

    /** Whether something was cut out of a sheet. */
    boolean drewCut() {
        return supplies.drewCut();
    }

    /** Whether a container was used after it had changed its size. */
    boolean drewBothSizes() {
        return supplies.drewBothSizes();
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
            case OPENING -> broughtIn(ref, Account.OPENING);
            case RECEIPT -> broughtIn(ref, pick(List.of(Account.MONEY, Account.PAYABLE, Account.OWNER_IN)));
            case SUPPLIER_RETURN -> returnedToSupplier(ref);
            case TAKING ->
                List.of(bench.out(ref, StockPlace.SHELF, chance(2), new Destination.Place(StockPlace.BENCH)));
            case BENCH_ENTRY -> bench.entry(ref);
            case COUNT -> bench.counted(ref);
            case SALE -> sale(ref);
            case REFUND -> refund();
            case REGROUPING -> pieces.regroup().<List<Move>>map(List::of).orElse(List.of());
            case LETTING_GO -> letGo(ref);
            case TILL_COUNT -> List.of(new Move.MoneyCounted(CASH_BOX, amount()));
            default -> fixed(Account.EXPENSE, Account.MONEY, amount());
        };
    }

    /** Lines for stock and for home that share a charge by what they cost; together they are what was paid. */
    private List<Move> broughtIn(DocumentRef ref, Account other) {
        List<Amount> nets = IntStream.rangeClosed(0, 1 + random.nextInt(3))
                .mapToObj(line -> amount())
                .toList();
        Amount charge = chance(2) ? amount() : Amount.ZERO;
        List<Amount> shares = Shares.split(
                charge,
                nets.stream().map(net -> BigDecimal.valueOf(net.minor())).toList());
        List<Move> moves = new ArrayList<>();
        moves.add(new Move.Post(Account.OWNER_OUT, Tags.NONE, nets.get(0).plus(shares.get(0))));
        for (int line = 1; line < nets.size(); line++) {
            Amount landed = nets.get(line).plus(shares.get(line));
            moves.add(chance(3) ? new Move.PieceIn(pieces.newOrKnown(), landed, chance(4)) : supplyIn(ref, landed));
        }
        moves.add(new Move.Post(
                other,
                Tags.NONE,
                nets.stream().collect(Amount.sum()).plus(charge).negated()));
        return moves;
    }

    private Move supplyIn(DocumentRef ref, Amount cost) {
        UUID supply = chance(8) ? RandomBench.BRUSH : supplies.any();
        BigDecimal quantity = supplies.bought(supply, ref.date());
        return new Move.SupplyIn(supply, pick(StockPlace.values()), quantity, cost, chance(4));
    }

    private List<Move> returnedToSupplier(DocumentRef ref) {
        List<Move> moves = new ArrayList<>(fixed(Account.MONEY, Account.WRITE_OFFS, amount()));
        Destination to = new Destination.To(Account.WRITE_OFFS, Tags.category("back"));
        moves.add(bench.out(ref, pick(StockPlace.values()), false, to));
        pieces.leave().ifPresent(piece -> moves.add(new Move.PieceOut(piece, Account.WRITE_OFFS)));
        return moves;
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
            Move.SupplyOut retail =
                    bench.out(ref, StockPlace.SHELF, false, new Destination.To(Account.COST_OF_RETAIL, Tags.NONE));
            moves.add(retail);
            retailSales.add(new RetailSale(ref.id(), retail.supply(), retail.quantity()));
        }
        for (int wrap = chance(2) ? random.nextInt(3) : 0; wrap > 0; wrap--) {
            Destination packed = new Destination.To(Account.EXPENSE, Tags.category(PACKAGING));
            moves.add(bench.out(ref, StockPlace.BENCH, chance(2), packed));
        }
        if (chance(3)) {
            moves.addAll(bundles(ref));
        }
        return moves;
    }

    /** A few of one bundle: each part leaves the shelf, and has its share of the price. */
    private List<Move> bundles(DocumentRef sale) {
        BigDecimal number = BigDecimal.valueOf(1L + random.nextInt(3));
        List<UUID> parts = RandomSupplies.SUPPLIES.subList(0, 2 + random.nextInt(2));
        Amount price = amount();
        List<Amount> shares =
                Shares.split(price, parts.stream().map(part -> supplies.plain()).toList());
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            UUID part = parts.get(i);
            BigDecimal quantity = number.multiply(supplies.used(part, sale.date()));
            moves.add(new Move.Post(
                    Account.SALES, Tags.supply(part), shares.get(i).negated()));
            moves.add(new Move.SupplyOut(
                    part, StockPlace.SHELF, quantity, false, new Destination.To(Account.COST_OF_RETAIL, Tags.NONE)));
            retailSales.add(new RetailSale(sale.id(), part, quantity));
        }
        moves.add(new Move.Post(Account.MONEY, at(Account.MONEY), price));
        return moves;
    }

    private List<Move> refund() {
        List<Move> moves = new ArrayList<>(fixed(Account.REFUNDS, Account.MONEY, amount()));
        pieces.comeBack().ifPresent(piece -> moves.add(new Move.PieceBack(piece, pieceSales.get(piece))));
        if (!retailSales.isEmpty()) {
            RetailSale sale = retailSales.remove(random.nextInt(retailSales.size()));
            BigDecimal part = chance(2) ? sale.quantity() : sale.quantity().min(supplies.plain());
            moves.add(new Move.SupplyBack(sale.supply(), StockPlace.SHELF, part, sale.sale()));
            BigDecimal rest = sale.quantity().subtract(part);
            if (rest.signum() > 0) {
                retailSales.add(new RetailSale(sale.sale(), sale.supply(), rest));
            }
        }
        return moves;
    }

    private List<Move> letGo(DocumentRef ref) {
        Account to = pick(List.of(Account.WRITE_OFFS, Account.OWN_USE));
        return Stream.concat(
                        pieces.leave().stream().map(piece -> (Move) new Move.PieceOut(piece, to)),
                        chance(2)
                                ? Stream.of(
                                        bench.out(ref, StockPlace.BENCH, chance(2), new Destination.To(to, Tags.NONE)))
                                : Stream.<Move>of())
                .toList();
    }

    private static List<Move> fixed(Account debit, Account credit, Amount amount) {
        return List.of(new Move.Post(debit, at(debit), amount), new Move.Post(credit, at(credit), amount.negated()));
    }

    private static Tags at(Account account) {
        return account == Account.MONEY ? Tags.place(CASH_BOX) : Tags.NONE;
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
