package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Properties over histories in which nothing awkward happens would prove nothing: here is what must be among them. */
class RandomHistoryTest {

    private static final int SEEDS = 300;
    private static final int SIZE = 40;

    @ParameterizedTest
    @EnumSource
    void awkwardThingsHappenInMany(StockMethod method) {
        List<Replay.Result> results = LongStream.range(0, SEEDS)
                .mapToObj(seed -> Replay.of(method, RandomHistory.of(seed, SIZE).documents()))
                .toList();
        happens(results, "uses still wait", result -> !result.uncosted().isEmpty());
        happens(results, "receipts cost earlier uses", by(DocumentKind.RECEIPT, Account.PIECES, true));
        happens(results, "and uses on what was sold", by(DocumentKind.RECEIPT, Account.COST_OF_PIECES, true));
        happens(results, "takings reach the bench late", by(DocumentKind.RECEIPT, Account.BENCH, true));
        happens(results, "counts correct uses", by(DocumentKind.COUNT, Account.PIECES, true));
        happens(results, "and uses on what was sold", by(DocumentKind.COUNT, Account.COST_OF_PIECES, true));
        happens(results, "counts write off", by(DocumentKind.COUNT, Account.WRITE_OFFS, false));
        happens(results, "counts find", by(DocumentKind.COUNT, Account.FOUND_AT_COUNT, false));
        happens(results, "retail comes back", by(DocumentKind.REFUND, Account.COST_OF_RETAIL, true));
        happens(results, "sales are packed", by(DocumentKind.SALE, Account.EXPENSE, false));
        happens(results, "receipts cost the packing of earlier sales", by(DocumentKind.RECEIPT, Account.EXPENSE, true));
        happens(results, "counts correct it", by(DocumentKind.COUNT, Account.EXPENSE, true));
        happens(results, "pieces come back", by(DocumentKind.REFUND, Account.COST_OF_PIECES, false));
        happens(results, "pieces are regrouped", by(DocumentKind.REGROUPING, Account.PIECES, false));
        happens(results, "pieces are let go", by(DocumentKind.LETTING_GO, Account.OWN_USE, false));
    }

    @ParameterizedTest
    @EnumSource
    void potsGetCostLateAndHandItOn(StockMethod method) {
        List<Replay.Result> results = LongStream.range(0, SEEDS)
                .mapToObj(seed -> Replay.of(method, RandomHistory.of(seed, SIZE).documents()))
                .toList();
        happens(results, "pots hand cost to pieces", ofPot(DocumentKind.BENCH_ENTRY, Account.PIECES));
        happens(results, "pots are counted short", ofPot(DocumentKind.COUNT, Account.WRITE_OFFS));
        happens(results, "receipts reach pots", ofPot(DocumentKind.RECEIPT, Account.BENCH));
        happens(results, "and what was made with them", ofPot(DocumentKind.RECEIPT, Account.PIECES));
        happens(results, "counts of ingredients reach them too", ofPot(DocumentKind.COUNT, Account.PIECES));
    }

    @ParameterizedTest
    @EnumSource
    void toolsWearOutEarlyAndLate(StockMethod method) {
        List<Replay.Result> results = LongStream.range(0, SEEDS)
                .mapToObj(seed -> Replay.of(method, RandomHistory.of(seed, SIZE).documents()))
                .toList();
        happens(results, "tools cost pieces", ofBrush(DocumentKind.BENCH_ENTRY, Account.PIECES));
        assertThat(results.stream().filter(ofBrush(DocumentKind.COUNT, Account.PIECES)))
                .as("counts settle them on pieces")
                .hasSizeGreaterThan(SEEDS / 30);
    }

    private static Predicate<Replay.Result> ofBrush(DocumentKind kind, Account account) {
        return result -> result.postings().stream()
                .anyMatch(posting -> posting.document().kind() == kind
                        && posting.account() == account
                        && RandomBench.BRUSH.equals(posting.tags().supply()));
    }

    @Test
    void everyKindOfThingIsDrawn() {
        List<RandomHistory> histories = LongStream.range(0, SEEDS)
                .mapToObj(seed -> RandomHistory.of(seed, SIZE))
                .toList();
        drawn(histories, "cuts out of sheets", RandomHistory::drewCut);
        drawn(histories, "containers that changed their size", RandomHistory::drewBothSizes);
        drawn(histories, "pots", history -> moves(history).anyMatch(RandomHistoryTest::isOnSeveral));
        drawn(histories, "kept pots", history -> moves(history).anyMatch(move -> move instanceof Move.Mixed));
        drawn(
                histories,
                "waste at a count",
                history -> moves(history).anyMatch(move -> move instanceof Move.Counted counted && counted.waste()));
        drawn(
                histories,
                "waste of a day",
                history -> moves(history)
                        .anyMatch(move -> move instanceof Move.SupplyOut out
                                && out.to() instanceof Move.Destination.To to
                                && to.account() == Account.WRITE_OFFS));
        drawn(
                histories,
                "counts of money",
                history -> moves(history).anyMatch(move -> move instanceof Move.MoneyCounted));
    }

    private static boolean isOnSeveral(Move move) {
        return move instanceof Move.SupplyOut out
                && out.to() instanceof Move.Destination.Pieces on
                && on.shares().size() > 1;
    }

    private static Stream<Move> moves(RandomHistory history) {
        return history.documents().stream().flatMap(document -> document.moves().stream());
    }

    private static void drawn(List<RandomHistory> histories, String what, Predicate<RandomHistory> predicate) {
        assertThat(histories.stream().filter(predicate).count()).as(what).isGreaterThan(SEEDS / 2);
    }

    private static Predicate<Replay.Result> ofPot(DocumentKind kind, Account account) {
        return result -> result.postings().stream()
                .anyMatch(posting -> posting.document().kind() == kind
                        && posting.account() == account
                        && posting.tags().supply() != null
                        && RandomBench.POTS.contains(posting.tags().supply()));
    }

    private static void happens(List<Replay.Result> results, String what, Predicate<Replay.Result> predicate) {
        assertThat(results.stream().filter(predicate).count()).as(what).isGreaterThan(SEEDS / 10);
    }

    private static Predicate<Replay.Result> by(DocumentKind kind, Account account, boolean forAnother) {
        return result -> result.postings().stream()
                .anyMatch(posting -> posting.document().kind() == kind
                        && posting.account() == account
                        && (posting.tags().origin() != null) == forAnother);
    }
}
