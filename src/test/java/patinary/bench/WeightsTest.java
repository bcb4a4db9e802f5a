package patinary.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;
import patinary.money.Shares;

class WeightsTest {

    private static final UUID BOX = UUID.fromString("00000000-0000-4000-8000-00000000000a");
    private static final UUID CRATE = UUID.fromString("00000000-0000-4000-8000-00000000000b");
    private static final BigDecimal SMALL = new BigDecimal("619.3536");
    private static final BigDecimal LARGE = new BigDecimal("1238.7072");

    /** 12 x 8 in and twice that: 10.00 goes 3.33 and 6.67 (largest remainder, docs/handbook/sharing.md). */
    @Test
    void sharesBySurface() {
        List<UsePiece> parts =
                Weights.byArea(1, List.of(new Weights.Surface(BOX, SMALL), new Weights.Surface(CRATE, LARGE)));
        assertThat(Shares.split(
                        Amount.of(1000), parts.stream().map(UsePiece::weight).toList()))
                .containsExactly(Amount.of(333), Amount.of(667));
    }

    @Test
    void guessesNoSurface() {
        List<Weights.Surface> unknown = List.of(new Weights.Surface(BOX, null));
        assertThatIllegalArgumentException().isThrownBy(() -> Weights.byArea(1, unknown));
    }

    @Test
    void tellsTheWayOfSharingFromStoredWeights() {
        Map<UUID, BigDecimal> areas = Map.of(BOX, new BigDecimal("619.35360000000000"), CRATE, LARGE);
        List<UsePiece> byArea = List.of(new UsePiece(1, BOX, SMALL), new UsePiece(1, CRATE, LARGE));
        assertThat(Weights.modeOf(byArea, areas)).isEqualTo(ShareMode.AREA);
        assertThat(Weights.modeOf(byArea, Map.of(BOX, SMALL))).isEqualTo(ShareMode.TYPED);
        assertThat(Weights.modeOf(Weights.equal(1, List.of(BOX, CRATE)), areas)).isEqualTo(ShareMode.EQUAL);
        assertThat(Weights.modeOf(List.of(), areas)).isEqualTo(ShareMode.NONE);
    }
}
