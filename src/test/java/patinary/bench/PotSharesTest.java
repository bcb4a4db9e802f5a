package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.ledger.Move;
import patinary.ledger.PieceShare;
import patinary.ledger.PotShare;

/** The rule of docs/handbook/pots.md, worked by hand. */
class PotSharesTest {

    private static final UUID BOX = id(1);
    private static final UUID CRATE = id(2);
    private static final UUID LAMP = id(3);
    private static final UUID KEPT = id(7);
    private static final UUID KEPT_CUP = id(8);

    /** 120 ml mixed: 60 on box and crate by 1 to 3, 30 into the cup, 30 kept. The cup adds 10 of an additive; 8 are kept. */
    private static final List<Pot> POTS =
            List.of(pot(1, null, "0", "120", "30", KEPT), pot(2, 1, "30", "40", "8", KEPT_CUP));

    private static final List<PotPiece> PIECES = List.of(
            new PotPiece(1, BOX, BigDecimal.ONE),
            new PotPiece(1, CRATE, new BigDecimal("3")),
            new PotPiece(2, LAMP, BigDecimal.ONE));

    @Test
    void whatIsInAPotIsFollowedThroughTheCup() {
        PotShares.Reached reached = new PotShares(POTS, PIECES).reached(1);
        assertThat(plain(reached.pieces())).isEqualTo(Map.of(BOX, "15", CRATE, "45", LAMP, "24"));
        assertThat(plain(reached.aside())).isEqualTo(Map.of(KEPT, "30", KEPT_CUP, "6"));
    }

    @Test
    void theAdditiveOfTheCupIsOnThePiecesOfTheCupAlone() {
        PotShares.Reached reached = new PotShares(POTS, PIECES).reached(2);
        assertThat(plain(reached.pieces())).isEqualTo(Map.of(LAMP, "32"));
        assertThat(plain(reached.aside())).isEqualTo(Map.of(KEPT_CUP, "8"));
    }

    @Test
    void whatIsThrownAwayStaysWithThePieces() {
        PotShares thrown = new PotShares(List.of(pot(1, null, "0", "120", "60", null)), PIECES.subList(0, 2));
        assertThat(plain(thrown.reached(1).pieces())).isEqualTo(Map.of(BOX, "30", CRATE, "90"));
        assertThat(thrown.reached(1).aside()).isEmpty();
    }

    @Test
    void everyIngredientMovesByTheSharesOfItsPot() {
        PotShares.Rows rows = PotShares.rows(POTS, PIECES, List.of(new PotUse(1, 1), new PotUse(2, 2)));
        BenchContent entry = new BenchContent(
                java.time.LocalDate.of(2025, 3, 2),
                "",
                60,
                "Mixed",
                List.of(),
                List.of(
                        new SupplyUse(1, id(20), "60 g", new BigDecimal("60"), false),
                        new SupplyUse(2, id(21), "10 ml", new BigDecimal("10"), true)),
                rows.pieces(),
                List.of(),
                new Handling(List.of(), POTS, PIECES, List.of(), rows.aside()));
        List<Move> moves = BenchPosting.moves(entry);
        assertThat(moves).hasSize(4);
        Move.Destination.Mix first = (Move.Destination.Mix) ((Move.SupplyOut) moves.get(0)).to();
        assertThat(first.pieces()).extracting(PieceShare::piece).containsExactly(BOX, CRATE, LAMP);
        assertThat(first.pots()).extracting(PotShare::pot).containsExactly(KEPT, KEPT_CUP);
        assertThat(moves.subList(2, 4))
                .containsExactly(
                        new Move.Mixed(KEPT, new BigDecimal("30")), new Move.Mixed(KEPT_CUP, new BigDecimal("8")));
    }

    /** However much is poured and kept: what reached pieces and jars is all that was in the pot, but for the last decimal. */
    @Property
    void nothingIsLostOnTheWay(
            @ForAll @IntRange(min = 100, max = 900) int made,
            @ForAll("parts") int poured,
            @ForAll("parts") int kept,
            @ForAll @IntRange(min = 0, max = 50) int added,
            @ForAll("parts") int keptOfCup) {
        List<Pot> pots = List.of(
                pot(1, null, "0", String.valueOf(made), String.valueOf(kept), KEPT),
                pot(
                        2,
                        1,
                        String.valueOf(poured),
                        String.valueOf(poured + added),
                        String.valueOf(Math.min(keptOfCup, poured)),
                        KEPT_CUP));
        PotShares.Reached reached = new PotShares(pots, PIECES).reached(1);
        BigDecimal all = Stream.concat(reached.pieces().values().stream(), reached.aside().values().stream())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(all.subtract(BigDecimal.valueOf(made)).abs()).isLessThan(new BigDecimal("0.0000000001"));
    }

    @Provide
    net.jqwik.api.Arbitrary<Integer> parts() {
        return Arbitraries.integers().between(1, 50);
    }

    private static Pot pot(
            int number, @Nullable Integer from, String poured, String made, String rest, @Nullable UUID keptAs) {
        return new Pot(
                number,
                "",
                from,
                new BigDecimal(poured),
                BigDecimal.ZERO,
                new BigDecimal(made),
                new BigDecimal(rest),
                keptAs,
                null);
    }

    private static Map<UUID, String> plain(Map<UUID, BigDecimal> weights) {
        return weights.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        entry -> entry.getValue().stripTrailingZeros().toPlainString()));
    }

    private static UUID id(int number) {
        return new UUID(0, number);
    }
}
