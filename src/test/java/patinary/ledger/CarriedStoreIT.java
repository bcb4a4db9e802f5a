package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.PAINT;
import static patinary.ledger.Story.cents;
import static patinary.ledger.Story.day;
import static patinary.ledger.Story.quantity;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import patinary.testing.ShopTest;

@ShopTest
class CarriedStoreIT {

    private static final UUID WAX = Story.name("wax");

    @Autowired
    private CarriedStore store;

    @Test
    void givesTheLastOfEachSupplyUpToADay() {
        keep(whole(PAINT, 1), part(PAINT, 3), part(PAINT, 5), whole(WAX, 2));
        assertThat(store.latest(List.of(PAINT, WAX), day(4))).containsExactlyInAnyOrder(part(PAINT, 3), whole(WAX, 2));
        assertThat(store.latest(List.of(PAINT, WAX), day(1))).containsExactly(whole(PAINT, 1));
        assertThat(store.latestWhole(List.of(PAINT), day(9))).containsExactly(whole(PAINT, 1));
    }

    @Test
    void forgetsWhatIsLaterThanAChange() {
        keep(whole(PAINT, 1), whole(PAINT, 3), whole(PAINT, 5), whole(WAX, 5));
        store.replace(Set.of(PAINT), day(3), List.of(part(PAINT, 6)));
        assertThat(store.of(PAINT)).containsExactly(whole(PAINT, 1), whole(PAINT, 3), part(PAINT, 6));
        assertThat(store.of(WAX)).containsExactly(whole(WAX, 5));
    }

    /** Fifty uses that wait, each on sixty pieces, are a line of 130,000 letters. */
    @Test
    void leavesOutWhatIsAsLongAsTheMovesItSpares() {
        UUID[] pieces = Collections.nCopies(60, Story.BOWL).toArray(new UUID[0]);
        Carried.OpenUse use = new Carried.OpenUse(
                new DocumentRef(Story.name("use"), DocumentKind.BENCH_ENTRY, day(1)),
                (Move.SupplyOut) Story.use("1", false, pieces),
                quantity("0"),
                quantity("1"),
                cents(0),
                false,
                cents(0),
                quantity("0"));
        Carried.AtPlace bench = new Carried.AtPlace(
                StockPlace.BENCH, List.of(), null, Collections.nCopies(50, use), List.of(), List.of(), true);
        keep(new Carried(PAINT, day(2), List.of(bench)), whole(PAINT, 3));
        assertThat(store.of(PAINT)).containsExactly(whole(PAINT, 3));
    }

    private void keep(Carried... carried) {
        store.replace(Set.of(), day(1), List.of(carried));
    }

    private static Carried whole(UUID supply, int day) {
        return at(supply, day, true);
    }

    private static Carried part(UUID supply, int day) {
        return at(supply, day, false);
    }

    private static Carried at(UUID supply, int day, boolean whole) {
        Carried.LotLeft lot = new Carried.LotLeft(quantity("7"), cents(1_000), false, quantity("4"));
        return new Carried(
                supply,
                day(day),
                List.of(new Carried.AtPlace(
                        StockPlace.BENCH, List.of(lot), lot, List.of(), List.of(), List.of(), whole)));
    }
}
