package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import patinary.money.Amount;

/** Holds one history, by one costing method, against all that must be true of it. */
final class HistoryCheck {

    /** Where stock goes to, and the account that finds come from. */
    private static final Set<Account> BEYOND_STOCK = EnumSet.of(
            Account.COST_OF_PIECES,
            Account.COST_OF_RETAIL,
            Account.WRITE_OFFS,
            Account.OWN_USE,
            Account.EXPENSE,
            Account.FOUND_AT_COUNT);

    /** What only documents say themselves, never costing; of expenses those that no supply is spent on. */
    private static final Set<Account> SAID = EnumSet.of(
            Account.PAYABLE,
            Account.OPENING,
            Account.OWNER_IN,
            Account.OWNER_OUT,
            Account.SALES,
            Account.REFUNDS,
            Account.EXPENSE);

    private static final Set<Account> OF_A_PARCEL = EnumSet.of(Account.BENCH, Account.EXPENSE);

    private record Key(UUID supply, StockPlace place) {}

    private record Said(UUID document, Account account) {}

    private record Moved(UUID document, UUID supply, Account account) {}

    private final RandomHistory history;
    private final StockMethod method;
    private final Replay.Result result;

    HistoryCheck(RandomHistory history, StockMethod method) {
        this.history = history;
        this.method = method;
        result = Replay.of(method, history.documents());
    }

    /** Each document, and so the ledger. */
    void everyDocumentAddsToZero() {
        assertThat(result.problems()).isEmpty();
        assertThat(sums(result.postings(), posting -> posting.document().id()).values())
                .allMatch(Amount::isZero);
        assertThat(sum(result.postings().stream())).isEqualTo(Amount.ZERO);
    }

    /** Opening and acquired cost, less what went beyond stock, is what the stock accounts hold and what is there. */
    void stockAgreesToTheCentAtEveryDate() {
        for (LocalDate date : history.dates()) {
            List<DocumentMoves> documents = history.upTo(date);
            List<Posting> postings = result.postings().stream()
                    .filter(p -> !p.document().date().isAfter(date))
                    .toList();
            Replay.Result then = Replay.of(method, documents);
            assertThat(then.postings()).isEqualTo(postings);
            Amount onAccounts = sum(postings.stream().filter(p -> p.account().isStock()));
            Amount gone = sum(postings.stream().filter(p -> BEYOND_STOCK.contains(p.account())));
            assertThat(onAccounts).isEqualTo(cameIn(documents).minus(gone.minus(fixedBeyondStock(documents))));
            assertThat(onAccounts)
                    .isEqualTo(Stream.concat(
                                    then.stock().stream().map(Replay.StockLeft::cost), then.pieces().values().stream())
                            .collect(Amount.sum()));
        }
    }

    /** Whatever posts it, and when: what a use, a pot, a set or a parcel took is on what bears it, and nothing more. */
    void sharesAddToWhatIsShared() {
        Set<UUID> mixes = ids(document -> document.moves().stream().anyMatch(move -> move instanceof Move.Mixed));
        Set<UUID> shared =
                ids(document -> Set.of(DocumentKind.BENCH_ENTRY, DocumentKind.TAKING, DocumentKind.REGROUPING)
                        .contains(document.document().kind()));
        Set<UUID> sales = ids(document -> document.document().kind() == DocumentKind.SALE);
        List<Posting> postings = result.postings().stream()
                .filter(p ->
                        shared.contains(origin(p)) || sales.contains(origin(p)) && OF_A_PARCEL.contains(p.account()))
                .toList();
        Map<List<UUID>, Amount> byUse = sums(postings, posting -> {
            UUID origin = origin(posting);
            UUID supply = posting.tags().supply();
            return List.of(origin, supply == null || mixes.contains(origin) ? origin : supply);
        });
        assertThat(byUse.values()).allMatch(Amount::isZero);
    }

    void eachSupplyAndPieceAgreesWithItsPostings() {
        Map<Key, List<Posting>> bySupply = result.postings().stream()
                .filter(posting -> posting.account() == Account.BENCH || posting.account() == Account.SHELF)
                .collect(Collectors.groupingBy(HistoryCheck::key));
        for (Replay.StockLeft left : result.stock()) {
            List<Posting> postings = bySupply.getOrDefault(new Key(left.supply(), left.place()), List.of());
            assertThat(postings.stream().map(Posting::quantity).reduce(BigDecimal.ZERO, BigDecimal::add))
                    .isEqualByComparingTo(left.quantity());
            assertThat(sum(postings.stream())).isEqualTo(left.cost());
            assertThat(left.quantity().signum() > 0 || left.cost().isZero())
                    .as("used up, so all of its cost went out: %s", left)
                    .isTrue();
            assertThat(left.cost().isNegative()).isFalse();
        }
        Map<UUID, Amount> pieces = sums(
                result.postings().stream()
                        .filter(posting -> posting.account() == Account.PIECES)
                        .toList(),
                posting -> Objects.requireNonNull(posting.tags().piece()));
        result.pieces()
                .forEach((piece, cost) ->
                        assertThat(cost).isEqualTo(Objects.requireNonNullElse(pieces.remove(piece), Amount.ZERO)));
        assertThat(pieces.values()).as("pieces that left").allMatch(Amount::isZero);
    }

    static Map<UUID, List<Posting>> grouped(List<Posting> postings) {
        return postings.stream()
                .collect(Collectors.groupingBy(posting -> posting.document().id()));
    }

    /** After a count there is what was counted, and nothing at that place waits any more. */
    void countsAreBelieved() {
        List<DocumentMoves> documents = history.documents();
        for (int i = 0; i < documents.size(); i++) {
            if (documents.get(i).moves().get(0) instanceof Move.Counted counted) {
                Replay.Result then = Replay.of(method, documents.subList(0, i + 1));
                assertThat(then.stock())
                        .filteredOn(left -> left.supply().equals(counted.supply()) && left.place() == counted.place())
                        .singleElement()
                        .satisfies(left -> assertThat(left.quantity()).isEqualByComparingTo(counted.quantity()));
            }
        }
    }

    /** Books kept evening by evening, with mistakes put right, are those derived at once. */
    void orderOfTypingPlaysNoPart(long seed) {
        Map<UUID, List<Entry>> typed = new Typing(method, history, seed).done();
        assertThat(typed).isEqualTo(PostingStore.grouped(result.entries()));
    }

    /** What a document says itself stands in its postings, once: its fixed amounts, and the quantities it moves. */
    void nothingIsLostOrTwice() {
        Map<Said, Amount> said = new HashMap<>();
        Map<Moved, BigDecimal> moved = new HashMap<>();
        for (DocumentMoves document : history.documents()) {
            for (Move move : document.moves()) {
                say(document.document().id(), noMoreThanThereIs(document.document(), move), said, moved);
            }
        }
        Map<Said, Amount> posted = sums(
                result.postings().stream()
                        .filter(p -> SAID.contains(p.account()))
                        // Costing moves supplies to other accounts, and never to sales.
                        .filter(p -> p.tags().supply() == null || p.account() == Account.SALES)
                        .toList(),
                posting -> new Said(posting.document().id(), posting.account()));
        assertThat(without(posted.entrySet(), Amount::isZero)).isEqualTo(without(said.entrySet(), Amount::isZero));
        Map<Moved, BigDecimal> quantities = new HashMap<>();
        result.postings().stream()
                .filter(p -> p.tags().origin() == null && p.document().kind() != DocumentKind.COUNT)
                .filter(p -> p.document().kind() != DocumentKind.TAKING)
                .forEach(p -> add(quantities, p.document().id(), p.tags().supply(), p.account(), p.quantity()));
        assertThat(without(quantities.entrySet(), q -> q.signum() == 0))
                .isEqualTo(without(moved.entrySet(), q -> q.signum() == 0));
    }

    /** The wear of a tool takes what the documents before it left, at most; an entry of a history wears one tool once. */
    private Move noMoreThanThereIs(DocumentRef document, Move move) {
        if (!(move instanceof Move.SupplyOut out) || !out.wears()) {
            return move;
        }
        BigDecimal left = result.postings().stream()
                .filter(p -> p.document().compareTo(document) < 0)
                .filter(p -> p.account() == out.place().account()
                        && out.supply().equals(p.tags().supply()))
                .map(Posting::quantity)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal taken = out.quantity().min(left.max(BigDecimal.ZERO));
        return new Move.SupplyOut(out.supply(), out.place(), taken, out.estimated(), out.to());
    }

    private static void say(UUID id, Move move, Map<Said, Amount> said, Map<Moved, BigDecimal> moved) {
        if (move instanceof Move.Post post && SAID.contains(post.account())) {
            said.merge(new Said(id, post.account()), post.amount(), Amount::plus);
        } else if (move instanceof Move.SupplyIn in) {
            add(moved, id, in.supply(), in.place().account(), in.quantity());
        } else if (move instanceof Move.SupplyOut out && !(out.to() instanceof Move.Destination.Place)) {
            add(moved, id, out.supply(), out.place().account(), out.quantity().negate());
        } else if (move instanceof Move.SupplyBack back) {
            add(moved, id, back.supply(), back.place().account(), back.quantity());
        } else if (move instanceof Move.Mixed mixed) {
            add(moved, id, mixed.pot(), Account.BENCH, mixed.quantity());
        }
    }

    private static void add(Map<Moved, BigDecimal> sums, UUID id, UUID supply, Account account, BigDecimal quantity) {
        if (supply != null) {
            sums.merge(new Moved(id, supply, account), plain(quantity), (a, b) -> plain(a.add(b)));
        }
    }

    private static BigDecimal plain(BigDecimal quantity) {
        return quantity.signum() == 0 ? BigDecimal.ZERO : quantity.stripTrailingZeros();
    }

    private static <K, V> Map<K, V> without(Collection<Map.Entry<K, V>> entries, Predicate<V> none) {
        return entries.stream()
                .filter(entry -> !none.test(entry.getValue()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private Set<UUID> ids(Predicate<DocumentMoves> which) {
        return history.documents().stream()
                .filter(which)
                .map(document -> document.document().id())
                .collect(Collectors.toSet());
    }

    private static UUID origin(Posting posting) {
        return Objects.requireNonNullElse(
                posting.tags().origin(), posting.document().id());
    }

    private static Key key(Posting posting) {
        StockPlace place = posting.account() == Account.BENCH ? StockPlace.BENCH : StockPlace.SHELF;
        return new Key(Objects.requireNonNull(posting.tags().supply()), place);
    }

    private static <K> Map<K, Amount> sums(List<Posting> postings, Function<Posting, K> by) {
        Map<K, Amount> result = new HashMap<>();
        postings.forEach(posting -> result.merge(by.apply(posting), posting.amount(), Amount::plus));
        return result;
    }

    private static Amount cameIn(List<DocumentMoves> documents) {
        return moves(documents)
                .map(move -> move instanceof Move.SupplyIn in
                        ? in.cost()
                        : move instanceof Move.PieceIn in ? in.cost() : Amount.ZERO)
                .collect(Amount.sum());
    }

    private static Amount fixedBeyondStock(List<DocumentMoves> documents) {
        return moves(documents)
                .filter(move -> move instanceof Move.Post post && BEYOND_STOCK.contains(post.account()))
                .map(move -> ((Move.Post) move).amount())
                .collect(Amount.sum());
    }

    private static Stream<Move> moves(List<DocumentMoves> documents) {
        return documents.stream().flatMap(document -> document.moves().stream());
    }

    private static Amount sum(Stream<Posting> postings) {
        return postings.map(Posting::amount).collect(Amount.sum());
    }
}
