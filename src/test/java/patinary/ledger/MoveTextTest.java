package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import patinary.ledger.Move.Destination;
import patinary.money.Amount;

class MoveTextTest {

    private static final UUID ONE = UUID.fromString("00000000-0000-4000-8000-000000000001");
    private static final UUID TWO = UUID.fromString("00000000-0000-4000-8000-000000000002");

    @Test
    void readsWhatItWrote() {
        Tags tags = new Tags(ONE, "tools and \"such\" – 5 %", TWO, ONE, TWO, null, true);
        BigDecimal some = new BigDecimal("1.5");
        List<PieceShare> pieces = List.of(new PieceShare(ONE, some), new PieceShare(TWO, new BigDecimal("3")));
        List<PotShare> pots = List.of(new PotShare(TWO, some));
        List.of(
                        new Move.SupplyIn(ONE, StockPlace.SHELF, some, Amount.of(-5), true),
                        out(new Destination.Pieces(pieces)),
                        out(new Destination.Pieces(List.of())),
                        out(new Destination.Mix(pieces, pots)),
                        out(new Destination.Mix(List.of(), pots)),
                        out(new Destination.Place(StockPlace.BENCH)),
                        out(new Destination.To(Account.EXPENSE, tags)),
                        out(new Destination.To(Account.WRITE_OFFS, Tags.category(""))),
                        new Move.SupplyBack(ONE, StockPlace.SHELF, some, TWO),
                        new Move.Mixed(ONE, some),
                        new Move.Counted(ONE, StockPlace.BENCH, some, true),
                        new Move.PieceIn(ONE, Amount.of(7), false),
                        new Move.PieceOut(ONE, Account.OWN_USE),
                        new Move.PieceOut(ONE, Account.WRITE_OFFS, "back, to the shop"),
                        new Move.PieceBack(ONE, TWO),
                        new Move.Regroup(List.of(ONE, TWO), pieces),
                        new Move.MoneyCounted(ONE, Amount.of(0)))
                .forEach(move -> assertThat(MoveText.read(MoveText.of(move))).isEqualTo(move));
    }

    @Property
    void everyHistoryReadsAsItWasWritten(@ForAll long seed) {
        RandomHistory.of(seed, 20).documents().stream()
                .flatMap(document -> Strands.of(document).stream())
                .map(StrandMove::move)
                .forEach(move -> assertThat(MoveText.of(MoveText.read(MoveText.of(move))))
                        .isEqualTo(MoveText.of(move)));
    }

    @Test
    void equalNumbersAreWrittenTheSame() {
        assertThat(MoveText.of(new Move.Mixed(ONE, new BigDecimal("20.0"))))
                .isEqualTo(MoveText.of(new Move.Mixed(ONE, new BigDecimal("20"))));
    }

    @Test
    void aFixedAmountIsOfNoStrand() {
        Move post = new Move.Post(Account.FEES, Tags.NONE, Amount.of(1));
        assertThat(Strands.of(post)).isEmpty();
        assertThatThrownBy(() -> MoveText.of(post)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Move out(Destination to) {
        return new Move.SupplyOut(ONE, StockPlace.BENCH, new BigDecimal("0.25"), true, to, true);
    }
}
