package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import patinary.money.Amount;

/** What must hold whatever happens in a shop; 10,000 random histories over both methods. */
class HistoryPropertyTest {

    /** Where stock goes to, and the account that finds come from. */
    private static final Set<Account> BEYOND_STOCK = Set.of(
            Account.COST_OF_PIECES,
            Account.COST_OF_RETAIL,
            Account.WRITE_OFFS,
            Account.OWN_USE,
            Account.FOUND_AT_COUNT);

    private record Key(UUID supply, StockPlace place) {}

    @Provide
    Arbitrary<RandomHistory> histories() {
        return Combinators.combine(Arbitraries.longs(), Arbitraries.integers().between(5, 40))
                .as(RandomHistory::of);
    }

    @Property(tries = 2_000)
    void everyDocumentAddsToZeroAndCanBeCarriedOut(
            @ForAll("histories") RandomHistory history, @ForAll StockMethod method) {
        Replay.Result result = Replay.of(method, history.documents());
        assertThat(result.problems()).isEmpty();
        Map<UUID, Amount> byDocument = result.postings().stream()
                .collect(Collectors.groupingBy(
                        p -> p.document().id(), Collectors.mapping(Posting::amount, Amount.sum())));
        assertThat(byDocument.values()).allMatch(Amount::isZero);
        assertThat(sum(result.postings().stream())).isEqualTo(Amount.ZERO);
    }

    /** Opening and acquired cost, less what went beyond stock, is what the stock accounts hold and what is there. */
    @Property(tries = 2_000)
    void stockAgreesToTheCentAtEveryDate(@ForAll("histories") RandomHistory history, @ForAll StockMethod method) {
        List<Posting> all = Replay.of(method, history.documents()).postings();
        for (LocalDate date : history.dates()) {
            List<DocumentMoves> documents = history.upTo(date);
            List<Posting> postings =
                    all.stream().filter(p -> !p.document().date().isAfter(date)).toList();
            Replay.Result result = Replay.of(method, documents);
            assertThat(result.postings()).isEqualTo(postings);
            Amount onAccounts = sum(postings.stream().filter(p -> p.account().isStock()));
            Amount gone = sum(postings.stream().filter(p -> BEYOND_STOCK.contains(p.account())));
            assertThat(onAccounts).isEqualTo(cameIn(documents).minus(gone.minus(fixedBeyondStock(documents))));
            assertThat(onAccounts)
                    .isEqualTo(Stream.concat(
                                    result.stock().stream().map(Replay.StockLeft::cost),
                                    result.pieces().values().stream())
                            .collect(Amount.sum()));
        }
    }

    @Property(tries = 1_500)
    void eachSupplyAndPieceAgreesWithItsPostings(
            @ForAll("histories") RandomHistory history, @ForAll StockMethod method) {
        Replay.Result result = Replay.of(method, history.documents());
        for (Replay.StockLeft left : result.stock()) {
            List<Posting> postings = result.postings().stream()
                    .filter(p -> p.account() == left.place().account())
                    .filter(p -> left.supply().equals(p.tags().supply()))
                    .toList();
            assertThat(postings.stream().map(Posting::quantity).reduce(BigDecimal.ZERO, BigDecimal::add))
                    .isEqualByComparingTo(left.quantity());
            assertThat(sum(postings.stream())).isEqualTo(left.cost());
            assertThat(left.quantity().signum() > 0 || left.cost().isZero())
                    .as("used up, so all of its cost went out: %s", left)
                    .isTrue();
            assertThat(left.cost().isNegative()).isFalse();
        }
        Map<UUID, Amount> pieces = onPieces(result.postings());
        result.pieces()
                .forEach((piece, cost) ->
                        assertThat(cost).isEqualTo(Objects.requireNonNullElse(pieces.remove(piece), Amount.ZERO)));
        assertThat(pieces.values()).as("pieces that left").allMatch(Amount::isZero);
    }

    /** Whatever posts it, and when: the cost that left the bench for an entry is on the entry's pieces. */
    @Property(tries = 1_500)
    void sharesOfEachUseAddToTheUse(@ForAll("histories") RandomHistory history, @ForAll StockMethod method) {
        Replay.Result result = Replay.of(method, history.documents());
        Set<UUID> entries = history.documents().stream()
                .map(DocumentMoves::document)
                .filter(ref -> ref.kind() == DocumentKind.BENCH_ENTRY || ref.kind() == DocumentKind.TAKING)
                .map(DocumentRef::id)
                .collect(Collectors.toSet());
        Set<UUID> mixes = history.documents().stream()
                .filter(document -> document.moves().stream().anyMatch(move -> move instanceof Move.Mixed))
                .map(document -> document.document().id())
                .collect(Collectors.toSet());
        Map<List<UUID>, Amount> byUse = new HashMap<>();
        for (Posting posting : result.postings()) {
            UUID origin = Objects.requireNonNullElse(
                    posting.tags().origin(), posting.document().id());
            if (entries.contains(origin)) {
                UUID supply = Objects.requireNonNull(posting.tags().supply());
                byUse.merge(List.of(origin, mixes.contains(origin) ? origin : supply), posting.amount(), Amount::plus);
            }
        }
        assertThat(byUse.values()).allMatch(Amount::isZero);
    }

    @Property(tries = 1_500)
    void orderOfTypingPlaysNoPart(
            @ForAll("histories") RandomHistory history, @ForAll StockMethod method, @ForAll long shuffle) {
        Replay.Result typedInOrder = Replay.of(method, history.documents());
        Replay.Result typedAnyhow = Replay.of(method, history.shuffled(shuffle));
        assertThat(typedAnyhow.postings()).isEqualTo(typedInOrder.postings());
        assertThat(typedAnyhow.pieces()).isEqualTo(typedInOrder.pieces());
        assertThat(typedAnyhow.stock()).containsExactlyInAnyOrderElementsOf(typedInOrder.stock());
        assertThat(typedAnyhow.uncosted()).containsExactlyInAnyOrderElementsOf(typedInOrder.uncosted());
    }

    /** After a count there is what was counted, and nothing at that place waits any more. */
    @Property(tries = 1_500)
    void countsAreBelieved(@ForAll("histories") RandomHistory history, @ForAll StockMethod method) {
        List<DocumentMoves> documents = history.documents();
        for (int i = 0; i < documents.size(); i++) {
            for (Move move : documents.get(i).moves()) {
                if (move instanceof Move.Counted counted) {
                    Replay.Result result = Replay.of(method, documents.subList(0, i + 1));
                    Key key = new Key(counted.supply(), counted.place());
                    assertThat(quantities(result).get(key)).isEqualByComparingTo(counted.quantity());
                }
            }
        }
    }

    private static Map<Key, BigDecimal> quantities(Replay.Result result) {
        return result.stock().stream()
                .collect(Collectors.toMap(left -> new Key(left.supply(), left.place()), Replay.StockLeft::quantity));
    }

    private static Map<UUID, Amount> onPieces(List<Posting> postings) {
        Map<UUID, Amount> result = new HashMap<>();
        for (Posting posting : postings) {
            if (posting.account() == Account.PIECES) {
                result.merge(Objects.requireNonNull(posting.tags().piece()), posting.amount(), Amount::plus);
            }
        }
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
