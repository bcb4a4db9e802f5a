package patinary.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import patinary.money.Amount;

/** An invented market day, added up by hand. */
class PackingTotalsTest {

    @Test
    void tellsWhatIsPackedSoldHomeAndStillOut() {
        PackingTotals totals = PackingTotals.of(
                List.of(
                        piece("OFFERED", false, false, 9900L, null),
                        piece("OFFERED", true, false, 4500L, null),
                        piece("OFFERED", true, false, 1250L, null),
                        piece("READY", true, false, null, null),
                        piece("OFFERED", true, true, 3000L, null),
                        piece("SOLD", true, false, null, 4000L),
                        piece("GONE", true, false, null, null)),
                2);

        // Out: 45.00 + 12.50; in change 15.00 + 7.50. What is home or not packed is not in it.
        assertThat(totals)
                .isEqualTo(new PackingTotals(7, 6, 1, 1, 3, Amount.of(5750), Amount.of(4000), Amount.of(2250)));
    }

    /** Sold elsewhere later: it had come home, so the market did not sell it. */
    @Test
    void whatCameHomeWasNotSoldHere() {
        PackingTotals totals = PackingTotals.of(List.of(piece("SOLD", true, true, null, null)), 2);

        assertThat(totals).isEqualTo(new PackingTotals(1, 1, 0, 1, 0, Amount.ZERO, Amount.ZERO, null));
    }

    @Test
    void anEmptyListAddsUpToNothing() {
        assertThat(PackingTotals.of(List.of(), 2))
                .isEqualTo(new PackingTotals(0, 0, 0, 0, 0, Amount.ZERO, Amount.ZERO, null));
    }

    private static PackedPiece piece(
            String state, boolean packed, boolean home, @Nullable Long price, @Nullable Long sold) {
        return new PackedPiece(UUID.randomUUID(), "P0001", "Tray", "Shelf A", state, packed, home, price, sold);
    }
}
