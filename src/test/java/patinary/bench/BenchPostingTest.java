package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Account;
import patinary.ledger.Move;
import patinary.ledger.PieceShare;
import patinary.ledger.StockPlace;
import patinary.ledger.Tags;

/** The posting rule of docs/handbook/posting-rules-bench.md. */
class BenchPostingTest {

    private static final UUID PAINT = UUID.fromString("00000000-0000-4000-8000-000000000001");
    private static final UUID WAX = UUID.fromString("00000000-0000-4000-8000-000000000002");
    private static final UUID BOX = UUID.fromString("00000000-0000-4000-8000-00000000000a");
    private static final UUID CRATE = UUID.fromString("00000000-0000-4000-8000-00000000000b");

    @Test
    void everyUseLeavesTheBenchForItsOwnPieces() {
        BenchContent entry = entry(
                List.of(use(1, PAINT, "20", true), use(2, WAX, "5", false)),
                List.of(part(1, CRATE, "300"), part(1, BOX, "100"), part(2, BOX, "1")));
        assertThat(BenchPosting.moves(entry))
                .containsExactly(
                        new Move.SupplyOut(
                                PAINT,
                                StockPlace.BENCH,
                                new BigDecimal("20"),
                                true,
                                new Move.Destination.Pieces(List.of(share(BOX, "100"), share(CRATE, "300")))),
                        new Move.SupplyOut(
                                WAX,
                                StockPlace.BENCH,
                                new BigDecimal("5"),
                                false,
                                new Move.Destination.Pieces(List.of(share(BOX, "1")))));
    }

    @Test
    void whatWentOnNoPieceIsWaste() {
        assertThat(BenchPosting.moves(entry(List.of(use(1, PAINT, "2", true)), List.of())))
                .containsExactly(new Move.SupplyOut(
                        PAINT,
                        StockPlace.BENCH,
                        new BigDecimal("2"),
                        true,
                        new Move.Destination.To(Account.WRITE_OFFS, Tags.category("waste"))));
    }

    @Test
    void workWithoutSuppliesMovesNothing() {
        assertThat(BenchPosting.moves(entry(List.of(), List.of()))).isEmpty();
    }

    private static BenchContent entry(List<SupplyUse> uses, List<UsePiece> parts) {
        return new BenchContent(
                LocalDate.of(2025, 3, 2),
                "",
                60,
                "Painted",
                List.of(new BenchPiece(BOX, false), new BenchPiece(CRATE, false)),
                uses,
                parts,
                List.of());
    }

    private static SupplyUse use(int line, UUID supply, String quantity, boolean estimated) {
        return new SupplyUse(line, supply, quantity + " ml", new BigDecimal(quantity), estimated);
    }

    private static UsePiece part(int line, UUID piece, String weight) {
        return new UsePiece(line, piece, new BigDecimal(weight));
    }

    private static PieceShare share(UUID piece, String weight) {
        return new PieceShare(piece, new BigDecimal(weight));
    }
}
