package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/**
 * What a change touches, derived anew, gives the same books as all documents replayed: random histories are typed in any order, a
 * few documents at a time, back-dated, put right, moved to other days and removed. What replay refuses is refused.
 */
class RederivationTest {

    private static final int HISTORIES = 2_000;
    private static final int LONG_HISTORIES = 200;

    /** Often, as these histories are short. */
    private static final Carried.Rule CARRIED = new Carried.Rule(2, 1);

    @Provide
    Arbitrary<RandomHistory> histories() {
        return Combinators.combine(Arbitraries.longs(), Arbitraries.integers().between(5, 40))
                .as(RandomHistory::of);
    }

    @Property(tries = HISTORIES)
    void isTheSameAsReplayAfterEveryChange(@ForAll("histories") RandomHistory history, @ForAll long seed) {
        for (StockMethod method : StockMethod.values()) {
            new Shop(method, new Random(seed)).live(history);
        }
    }

    /** Where no supply is tied to a pot, most changes begin with what was carried forward. */
    @Property(tries = LONG_HISTORIES)
    void isTheSameFromWhatWasCarriedForward(@ForAll long seed) {
        for (StockMethod method : StockMethod.values()) {
            new Shop(method, new Random(seed)).live(withoutPots(RandomHistory.of(seed, 100)));
        }
    }

    private static List<DocumentMoves> withoutPots(RandomHistory history) {
        return history.documents().stream()
                .filter(document -> document.moves().stream().noneMatch(Strands::isTied))
                .toList();
    }

    /** So that the property means something: refusals, late cost on another piece, and changes that are small. */
    @Test
    void theHistoriesHoldWhatIsHard() {
        Shop shop = new Shop(StockMethod.FIFO, new Random(7));
        for (int seed = 0; seed < 60; seed++) {
            shop.live(RandomHistory.of(seed, 40));
        }
        for (int seed = 0; seed < 10; seed++) {
            shop.live(withoutPots(RandomHistory.of(seed, 100)));
        }
        assertThat(shop.refused).isGreaterThan(50);
        assertThat(shop.taken).isGreaterThan(1_000);
        assertThat(shop.meantElsewhere).isPositive();
        assertThat(shop.carried).isGreaterThan(1_000);
        assertThat(shop.kept.begun()).isGreaterThan(500);
        assertThat(shop.kept.fallenBack()).isGreaterThan(20);
        assertThat(shop.untouched).as("documents that no change had to look at").isGreaterThan(shop.looked);
    }

    /** One shop, and the same books kept in the two ways. */
    private static final class Shop {

        private final StockMethod method;
        private final Random random;
        private final Map<UUID, DocumentMoves> documents = new HashMap<>();
        private final KeptInMemory kept = new KeptInMemory(CARRIED);
        private int refused;
        private int taken;
        private int meantElsewhere;
        private int looked;
        private int untouched;
        private int carried;

        Shop(StockMethod method, Random random) {
            this.method = method;
            this.random = random;
        }

        void live(RandomHistory history) {
            live(history.documents());
        }

        void live(List<DocumentMoves> history) {
            change(documents.keySet().stream().toList(), List.of());
            List<DocumentMoves> waiting = new ArrayList<>(history);
            Collections.shuffle(waiting, random);
            while (!waiting.isEmpty()) {
                int several = Math.min(waiting.size(), 1 + random.nextInt(3));
                List<DocumentMoves> typed = new ArrayList<>(waiting.subList(0, several));
                waiting.subList(0, several).clear();
                change(List.of(), typed.stream().map(this::perhapsWrong).toList());
                if (random.nextInt(4) == 0 && !documents.isEmpty()) {
                    again();
                }
            }
            change(List.of(), history);
        }

        /** Something that is there is removed, typed once more, or put right. */
        private void again() {
            List<DocumentMoves> all = documents.values().stream()
                    .sorted((one, other) -> one.document().compareTo(other.document()))
                    .toList();
            DocumentMoves one = all.get(random.nextInt(all.size()));
            switch (random.nextInt(3)) {
                case 0 -> change(List.of(one.document().id()), List.of());
                case 1 -> change(List.of(), List.of(one));
                default -> change(List.of(), List.of(perhapsWrong(perhapsWrong(one))));
            }
        }

        private DocumentMoves perhapsWrong(DocumentMoves document) {
            DocumentRef ref = document.document();
            return switch (random.nextInt(6)) {
                case 0 ->
                    new DocumentMoves(
                            new DocumentRef(ref.id(), ref.kind(), ref.date().plusDays(random.nextInt(21) - 10L)),
                            document.moves());
                case 1 ->
                    new DocumentMoves(
                            ref, document.moves().stream().map(Shop::other).toList());
                case 2 ->
                    new DocumentMoves(
                            ref,
                            document.moves()
                                    .subList(0, random.nextInt(document.moves().size() + 1)));
                default -> document;
            };
        }

        private static Move other(Move move) {
            if (move instanceof Move.Post post) {
                return new Move.Post(post.account(), post.tags(), post.amount().plus(post.amount()));
            } else if (move instanceof Move.SupplyIn in) {
                Amount cost = in.cost().plus(in.cost());
                return new Move.SupplyIn(in.supply(), in.place(), in.quantity(), cost, in.estimated());
            } else if (move instanceof Move.PieceIn in) {
                return new Move.PieceIn(in.piece(), in.cost().plus(in.cost()), in.estimated());
            } else if (move instanceof Move.SupplyOut out) {
                BigDecimal half = out.quantity().divide(BigDecimal.valueOf(2));
                return new Move.SupplyOut(out.supply(), out.place(), half, out.estimated(), out.to(), out.wears());
            }
            return move;
        }

        private void change(List<UUID> removed, List<DocumentMoves> typed) {
            Map<UUID, DocumentMoves> wanted = new HashMap<>(documents);
            removed.forEach(wanted::remove);
            typed.forEach(document -> wanted.put(document.document().id(), document));
            Set<UUID> ids = new HashSet<>(removed);
            typed.forEach(document -> ids.add(document.document().id()));
            Replay.Result replayed = Replay.of(method, wanted.values());
            Change change = new Change(ids, typed, kept);
            Rederivation.Result result = Rederivation.of(method, kept, change);
            assertThat(Set.copyOf(result.problems())).isEqualTo(Set.copyOf(replayed.problems()));
            if (!replayed.problems().isEmpty()) {
                refused++;
                return;
            }
            taken++;
            kept.take(change, result);
            documents.clear();
            documents.putAll(wanted);
            assertThat(kept.entries()).isEqualTo(byDocument(replayed.entries()));
            assertThat(kept.uncosted()).isEqualTo(KeptInMemory.texts(replayed.uncosted()));
            assertCarriedForward();
            looked += result.derived().size();
            untouched += documents.size() - result.derived().size();
            meantElsewhere += (int) replayed.entries().stream()
                    .filter(entry -> entry.meant() != null)
                    .count();
        }

        /** What is carried forward of a supply is what following it from its first move gives. */
        private void assertCarriedForward() {
            kept.carried().stream()
                    .collect(Collectors.groupingBy(Carried::supply))
                    .forEach((supply, several) -> {
                        List<StrandMove> moves = kept.strands(List.of(supply));
                        assertThat(texts(several))
                                .isEqualTo(texts(CarriedAnew.of(method, supply, moves, several, CARRIED.uses())));
                        carried += several.size();
                    });
        }

        private static List<String> texts(List<Carried> several) {
            return several.stream()
                    .map(one -> one.day() + "\n" + CarriedText.of(one.places()))
                    .toList();
        }

        private static Map<UUID, List<Entry>> byDocument(List<Entry> entries) {
            return entries.stream()
                    .collect(Collectors.groupingBy(entry -> entry.document().id()));
        }
    }
}
