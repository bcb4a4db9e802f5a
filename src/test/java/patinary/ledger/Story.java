package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import patinary.ledger.Move.Destination;
import patinary.money.Amount;

/** Tells what happened in a shop, one document a line, with the one paint, the one place and the days numbered. */
final class Story {

    static final UUID PAINT = name("paint");

    /** Pieces in canonical order, so that of equal remainders the bowl's comes first. */
    static final UUID BOWL = new UUID(1, 1);

    static final UUID TRAY = new UUID(1, 2);
    static final UUID VASE = new UUID(1, 3);

    private static final LocalDate FIRST = LocalDate.of(2025, 1, 1);

    private final List<DocumentMoves> documents = new ArrayList<>();
    private final Map<UUID, UUID> sales = new HashMap<>();

    static UUID name(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    static LocalDate day(int number) {
        return FIRST.plusDays(number - 1L);
    }

    static Amount cents(long minor) {
        return Amount.of(minor);
    }

    static BigDecimal quantity(String text) {
        return new BigDecimal(text);
    }

    UUID document(int day, DocumentKind kind, Move... moves) {
        UUID id = new UUID(0, documents.size() + 1L);
        return document(id, day, kind, moves);
    }

    UUID document(UUID id, int day, DocumentKind kind, Move... moves) {
        documents.add(new DocumentMoves(new DocumentRef(id, kind, day(day)), List.of(moves)));
        return id;
    }

    UUID bought(int day, StockPlace place, String quantity, long cents) {
        return document(day, DocumentKind.RECEIPT, in(place, quantity, cents, false), paid(cents));
    }

    UUID bought(int day, String quantity, long cents) {
        return bought(day, StockPlace.BENCH, quantity, cents);
    }

    UUID boughtAtAbout(int day, String quantity, long cents) {
        return document(day, DocumentKind.RECEIPT, in(StockPlace.BENCH, quantity, cents, true), paid(cents));
    }

    UUID boughtPiece(int day, UUID piece, long cents) {
        return document(day, DocumentKind.RECEIPT, new Move.PieceIn(piece, cents(cents), false), paid(cents));
    }

    UUID used(int day, String quantity, UUID... pieces) {
        return document(day, DocumentKind.BENCH_ENTRY, use(quantity, false, pieces));
    }

    UUID usedAbout(int day, String quantity, UUID... pieces) {
        return document(day, DocumentKind.BENCH_ENTRY, use(quantity, true, pieces));
    }

    UUID counted(int day, String quantity) {
        return document(day, DocumentKind.COUNT, new Move.Counted(PAINT, StockPlace.BENCH, new BigDecimal(quantity)));
    }

    UUID countedAsWaste(int day, String quantity) {
        return document(
                day, DocumentKind.COUNT, new Move.Counted(PAINT, StockPlace.BENCH, new BigDecimal(quantity), true));
    }

    UUID taken(int day, String quantity) {
        return document(
                day,
                DocumentKind.TAKING,
                out(StockPlace.SHELF, quantity, false, new Destination.Place(StockPlace.BENCH)));
    }

    UUID soldRetail(int day, String quantity) {
        return document(
                day,
                DocumentKind.SALE,
                out(StockPlace.SHELF, quantity, false, new Destination.To(Account.COST_OF_RETAIL, Tags.NONE)));
    }

    UUID cameBack(int day, String quantity, UUID sale) {
        return document(
                day, DocumentKind.REFUND, new Move.SupplyBack(PAINT, StockPlace.SHELF, new BigDecimal(quantity), sale));
    }

    UUID sold(int day, UUID piece) {
        UUID sale = document(day, DocumentKind.SALE, new Move.PieceOut(piece, Account.COST_OF_PIECES));
        sales.put(piece, sale);
        return sale;
    }

    UUID returned(int day, UUID piece) {
        return returned(day, piece, sales.getOrDefault(piece, piece));
    }

    /** Comes back out of a sale that need not be its latest. */
    UUID returned(int day, UUID piece, UUID sale) {
        return document(day, DocumentKind.REFUND, new Move.PieceBack(piece, sale));
    }

    UUID letGo(int day, UUID piece, Account to) {
        return document(day, DocumentKind.LETTING_GO, new Move.PieceOut(piece, to));
    }

    UUID regrouped(int day, List<UUID> from, PieceShare... to) {
        return document(day, DocumentKind.REGROUPING, new Move.Regroup(from, List.of(to)));
    }

    static PieceShare share(UUID piece, String weight) {
        return new PieceShare(piece, new BigDecimal(weight));
    }

    static Move use(String quantity, boolean estimated, UUID... pieces) {
        Destination to = new Destination.Pieces(PieceShare.equal(Arrays.asList(pieces)));
        return out(StockPlace.BENCH, quantity, estimated, to);
    }

    static Move in(StockPlace place, String quantity, long cents, boolean estimated) {
        return new Move.SupplyIn(PAINT, place, new BigDecimal(quantity), cents(cents), estimated);
    }

    static Move paid(long cents) {
        return new Move.Post(Account.MONEY, Tags.NONE, cents(-cents));
    }

    static Move out(StockPlace place, String quantity, boolean estimated, Destination to) {
        return new Move.SupplyOut(PAINT, place, new BigDecimal(quantity), estimated, to);
    }

    List<DocumentMoves> documents() {
        return List.copyOf(documents);
    }

    Told told() {
        return told(StockMethod.FIFO);
    }

    Told told(StockMethod method) {
        return new Told(Replay.of(method, documents));
    }

    /** What the replay made of the story, with the questions tests ask. */
    record Told(Replay.Result result) {

        long on(Account account) {
            return sum(postings().filter(posting -> posting.account() == account));
        }

        long on(int day, Account account) {
            return sum(postings()
                    .filter(posting -> posting.account() == account)
                    .filter(posting -> posting.document().date().equals(day(day))));
        }

        long on(Account account, UUID piece) {
            return sum(postings()
                    .filter(posting -> posting.account() == account)
                    .filter(posting -> piece.equals(posting.tags().piece())));
        }

        long estimatedOn(Account account) {
            return sum(postings()
                    .filter(posting -> posting.account() == account)
                    .filter(posting -> posting.tags().estimated()));
        }

        /** The net amount of one document on an account. */
        long of(UUID document, Account account) {
            return sum(postings()
                    .filter(posting -> posting.document().id().equals(document))
                    .filter(posting -> posting.account() == account));
        }

        BigDecimal quantity(StockPlace place) {
            return left(place).map(Replay.StockLeft::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        long cost(StockPlace place) {
            return left(place).map(Replay.StockLeft::cost).collect(Amount.sum()).minor();
        }

        List<Problem.Reason> problems() {
            return result.problems().stream().map(Problem::reason).toList();
        }

        Stream<Posting> postings() {
            return result.postings().stream();
        }

        private Stream<Replay.StockLeft> left(StockPlace place) {
            return result.stock().stream().filter(left -> left.place() == place);
        }

        private static long sum(Stream<Posting> postings) {
            return postings.map(Posting::amount).collect(Amount.sum()).minor();
        }
    }
}
