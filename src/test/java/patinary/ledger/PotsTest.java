package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.TRAY;
import static patinary.ledger.Story.VASE;
import static patinary.ledger.Story.cents;
import static patinary.ledger.Story.name;
import static patinary.ledger.Story.quantity;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import patinary.ledger.Move.Destination;

/** Pots that were mixed, put aside and used later; worked by hand. */
class PotsTest {

    private static final UUID POT = name("kept pot");
    private static final UUID SECOND = name("second kept pot");

    private final Story story = new Story();

    /** 100 g for 10.00; 60 g make 90 ml, of which 60 ml go on the bowl and 30 ml are kept: 4.00 and 2.00. */
    @ParameterizedTest
    @EnumSource
    void whatIsKeptTakesItsPartOfTheCostAlong(StockMethod method) {
        story.bought(1, "100", 1000);
        story.document(2, DocumentKind.BENCH_ENTRY, mix("60", false, share(BOWL, "60"), pot(POT, "30")), mixed("30"));
        Story.Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(400);
        assertThat(cost(told, POT)).isEqualTo(200);
        assertThat(told.on(Account.BENCH)).isEqualTo(600);
    }

    /** 10 ml of the 30 ml at 2.00 cost 0.67, the next 20 ml 1.33: used up, the pot gave out exactly its cost. */
    @Test
    void aPotIsUsedLikeAnySupply() {
        story.bought(1, "100", 1000);
        story.document(2, DocumentKind.BENCH_ENTRY, mix("60", false, share(BOWL, "60"), pot(POT, "30")), mixed("30"));
        story.document(3, DocumentKind.BENCH_ENTRY, use(POT, "10", TRAY));
        story.document(4, DocumentKind.BENCH_ENTRY, use(POT, "20", VASE));
        Story.Told told = story.told();
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(67);
        assertThat(told.on(Account.PIECES, VASE)).isEqualTo(133);
        assertThat(cost(told, POT)).isZero();
    }

    /** The powder is bought on day 5: each of what was made of the pot gets on that day what it would have got at once. */
    @ParameterizedTest
    @EnumSource
    void aLateReceiptReachesWhatWasMadeOfThePot(StockMethod method) {
        story.document(2, DocumentKind.BENCH_ENTRY, mix("60", false, share(BOWL, "60"), pot(POT, "30")), mixed("30"));
        story.document(3, DocumentKind.BENCH_ENTRY, use(POT, "10", TRAY));
        story.bought(5, "100", 1000);
        Story.Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(400);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(67);
        assertThat(cost(told, POT)).isEqualTo(133);
        assertThat(told.on(3, Account.PIECES)).isZero();
        assertThat(told.on(5, Account.PIECES)).isEqualTo(467);
    }

    /** Tray, and vase through a second pot, wait with the powder; the oil in the second pot is bought and waits for nothing. */
    @Test
    void whatIsMadeOfAPotWaitsWithItsPowder() {
        story.document(2, DocumentKind.BENCH_ENTRY, mix("60", false, share(BOWL, "60"), pot(POT, "30")), mixed("30"));
        UUID tray = story.document(3, DocumentKind.BENCH_ENTRY, use(POT, "10", TRAY));
        UUID again = story.document(
                4,
                DocumentKind.BENCH_ENTRY,
                new Move.SupplyOut(
                        POT, StockPlace.BENCH, quantity("5"), false, into(new PotShare(SECOND, quantity("5")))),
                new Move.Mixed(SECOND, quantity("5")));
        UUID vase = story.document(5, DocumentKind.BENCH_ENTRY, use(SECOND, "2", VASE));
        story.bought(6, "40", 400);
        assertThat(story.told().result().uncosted().stream().filter(Replay.Uncosted::throughPot))
                .extracting(waits -> waits.document().id())
                .containsExactlyInAnyOrder(tray, again, vase);
        assertThat(story.told().result().uncosted()).hasSize(4);
        story.bought(7, "20", 200);
        assertThat(story.told().result().uncosted()).isEmpty();
    }

    /** A count finds 20 g less than the books: all of it was used for the pot, so 2.00 more are shared 2 to 1. */
    @Test
    void aCountOfAnIngredientReachesThePot() {
        story.bought(1, "100", 1000);
        story.document(2, DocumentKind.BENCH_ENTRY, mix("60", true, share(BOWL, "60"), pot(POT, "30")), mixed("30"));
        story.document(3, DocumentKind.BENCH_ENTRY, use(POT, "15", TRAY));
        story.counted(4, "20");
        Story.Told told = story.told();
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(533);
        assertThat(told.on(Account.PIECES, TRAY) + cost(told, POT)).isEqualTo(267);
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(134);
    }

    /** What dried up is written off, and a receipt that comes still later is written off with it. */
    @Test
    void whatDriedUpBearsItsPartToo() {
        story.document(2, DocumentKind.BENCH_ENTRY, mix("60", false, share(BOWL, "60"), pot(POT, "30")), mixed("30"));
        story.document(3, DocumentKind.COUNT, new Move.Counted(POT, StockPlace.BENCH, quantity("0")));
        story.bought(5, "100", 1000);
        Story.Told told = story.told();
        assertThat(told.on(Account.WRITE_OFFS)).isEqualTo(200);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(400);
        assertThat(cost(told, POT)).isZero();
    }

    /** A third of the pot went on the tray, the rest dried up; its 4.00 come in two parts and are shared as if at once. */
    @Test
    void whatDriedUpBearsNoPartTwice() {
        story.document(2, DocumentKind.BENCH_ENTRY, mix("60", false, share(BOWL, "60"), pot(POT, "30")), mixed("30"));
        story.document(3, DocumentKind.BENCH_ENTRY, use(POT, "10", TRAY));
        story.document(4, DocumentKind.COUNT, new Move.Counted(POT, StockPlace.BENCH, quantity("0")));
        story.bought(5, "30", 300);
        story.bought(6, "30", 900);
        Story.Told told = story.told();
        assertThat(told.on(Account.PIECES, TRAY)).isEqualTo(133);
        assertThat(told.on(Account.WRITE_OFFS)).isEqualTo(267);
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(800);
    }

    /** A pot poured into another hands its late cost on through both. */
    @Test
    void aPotMayBePouredIntoAnother() {
        story.document(2, DocumentKind.BENCH_ENTRY, mix("60", false, pot(POT, "90")), mixed("90"));
        story.document(
                3,
                DocumentKind.BENCH_ENTRY,
                new Move.SupplyOut(
                        POT,
                        StockPlace.BENCH,
                        quantity("45"),
                        false,
                        new Destination.Mix(List.of(share(BOWL, "20")), List.of(new PotShare(SECOND, quantity("25"))))),
                new Move.Mixed(SECOND, quantity("25")));
        story.document(4, DocumentKind.BENCH_ENTRY, use(SECOND, "25", VASE));
        story.bought(5, "60", 900);
        Story.Told told = story.told();
        assertThat(told.on(Account.PIECES, BOWL)).isEqualTo(200);
        assertThat(told.on(Account.PIECES, VASE)).isEqualTo(250);
        assertThat(cost(told, POT)).isEqualTo(450);
        assertThat(cost(told, SECOND)).isZero();
    }

    /**
     * 10 g for 10.00 make 10 ml by eye; 4 ml of them go into a second pot by eye, at 4.00. A count finds all the powder:
     * nothing was in either pot. Then 8 ml are counted in the first, so the second took 2 less, which cost nothing by now.
     */
    @ParameterizedTest
    @EnumSource
    void aUseThatBecameCheaperGivesNoOldCostBack(StockMethod method) {
        story.bought(1, "10", 1000);
        story.document(2, DocumentKind.BENCH_ENTRY, mix("10", true, pot(POT, "10")), mixed("10"));
        story.document(
                3,
                DocumentKind.BENCH_ENTRY,
                new Move.SupplyOut(POT, StockPlace.BENCH, quantity("4"), true, into(pot(SECOND, "4"))),
                new Move.Mixed(SECOND, quantity("4")));
        assertThat(cost(story.told(method), SECOND)).isEqualTo(400);
        story.counted(4, "10");
        story.document(5, DocumentKind.COUNT, new Move.Counted(POT, StockPlace.BENCH, quantity("8"), false));
        Story.Told told = story.told(method);
        assertThat(cost(told, Story.PAINT)).isEqualTo(1000);
        assertThat(cost(told, POT)).isZero();
        assertThat(cost(told, SECOND)).isZero();
    }

    /**
     * 1 ml is found in the pot, so it bears the 10.00 that 10 g cost when more is mixed, by eye, out of them. A count finds all
     * the powder: the pot costs nothing, and what is found beyond it is worth nothing, and not less.
     */
    @ParameterizedTest
    @EnumSource
    void whatIsFoundIsNeverWorthLessThanNothing(StockMethod method) {
        story.bought(1, "10", 1000);
        story.document(1, DocumentKind.COUNT, new Move.Counted(POT, StockPlace.BENCH, quantity("1")));
        story.document(2, DocumentKind.BENCH_ENTRY, mix("10", true, pot(POT, "10")), mixed("10"));
        story.document(3, DocumentKind.BENCH_ENTRY, use(POT, "11", BOWL));
        story.counted(4, "10");
        story.document(5, DocumentKind.COUNT, new Move.Counted(POT, StockPlace.BENCH, quantity("4")));
        Story.Told told = story.told(method);
        assertThat(told.on(Account.PIECES, BOWL)).isZero();
        assertThat(cost(told, POT)).isZero();
    }

    @Test
    void noPotIsInItself() {
        story.document(
                2,
                DocumentKind.BENCH_ENTRY,
                new Move.SupplyOut(SECOND, StockPlace.BENCH, quantity("5"), false, into(pot(POT, "1"))),
                mixed("30"));
        UUID second = story.document(
                3,
                DocumentKind.BENCH_ENTRY,
                new Move.SupplyOut(POT, StockPlace.BENCH, quantity("5"), false, into(pot(SECOND, "1"))),
                new Move.Mixed(SECOND, quantity("5")));
        Story.Told told = story.told();
        assertThat(told.problems()).containsExactly(Problem.Reason.POT_OF_ITSELF);
        assertThat(told.result().problems().get(0).document().id()).isEqualTo(second);
    }

    private static Move mix(String quantity, boolean estimated, PieceShare piece, PotShare pot) {
        return Story.out(StockPlace.BENCH, quantity, estimated, new Destination.Mix(List.of(piece), List.of(pot)));
    }

    private static Move mix(String quantity, boolean estimated, PotShare pot) {
        return Story.out(StockPlace.BENCH, quantity, estimated, into(pot));
    }

    private static Destination into(PotShare pot) {
        return new Destination.Mix(List.of(), List.of(pot));
    }

    private static Move mixed(String quantity) {
        return new Move.Mixed(POT, quantity(quantity));
    }

    private static Move use(UUID supply, String quantity, UUID piece) {
        return new Move.SupplyOut(
                supply,
                StockPlace.BENCH,
                quantity(quantity),
                false,
                new Destination.Pieces(PieceShare.equal(List.of(piece))));
    }

    private static PieceShare share(UUID piece, String weight) {
        return Story.share(piece, weight);
    }

    private static PotShare pot(UUID pot, String weight) {
        return new PotShare(pot, quantity(weight));
    }

    private static long cost(Story.Told told, UUID supply) {
        return told.result().stock().stream()
                .filter(left -> left.supply().equals(supply))
                .map(Replay.StockLeft::cost)
                .reduce(cents(0), patinary.money.Amount::plus)
                .minor();
    }
}
