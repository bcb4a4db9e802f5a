package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.PAINT;
import static patinary.ledger.Story.TRAY;
import static patinary.ledger.Story.VASE;
import static patinary.ledger.Story.cents;
import static patinary.ledger.Story.day;
import static patinary.ledger.Story.quantity;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import patinary.ledger.Move.Destination;

/** What is carried forward, by hand, and which changes it is enough for. */
class CarriedForwardTest {

    /** After two moves of the paint, with no use since a count. */
    private static final Carried.Rule SECOND_MOVE = new Carried.Rule(2, 0);

    private final Story story = new Story();
    private final KeptInMemory kept = new KeptInMemory(SECOND_MOVE);

    /** 10 for 10.00, of which 2 and about 3 are used before the fourth day; 4 more stand on the shelf. */
    @BeforeEach
    void tell() {
        story.bought(1, "10", 1_000);
        story.used(1, "2", BOWL);
        story.bought(2, StockPlace.SHELF, "4", 600);
        story.usedAbout(3, "3", TRAY);
        story.used(5, "1", VASE);
    }

    @Test
    void holdsWhatIsLeftAtEachPlace() {
        Carried carried = carriedTo(day(4), 1);
        assertThat(carried.places())
                .extracting(Carried.AtPlace::place, Carried.AtPlace::lots)
                .containsExactly(
                        tuple(
                                StockPlace.BENCH,
                                List.of(new Carried.LotLeft(quantity("10"), cents(1_000), false, quantity("5")))),
                        tuple(
                                StockPlace.SHELF,
                                List.of(new Carried.LotLeft(quantity("4"), cents(600), false, quantity("0")))));
    }

    /** The exact use is done; the one of about 3 would be put right by the next count, and had cost 3.00. */
    @Test
    void holdsTheUsesThatACountWouldSettle() {
        Carried.AtPlace bench = carriedTo(day(4), 1).places().get(0);
        assertThat(bench.uses())
                .extracting(Carried.OpenUse::costed, Carried.OpenUse::charged)
                .containsExactly(tuple(quantity("3"), cents(300)));
        assertThat(bench.sinceCount()).containsExactly(0);
        assertThat(bench.whole()).isTrue();
    }

    @Test
    void leavesThemOutWhereTheyAreMany() {
        Carried carried = carriedTo(day(4), 0);
        assertThat(carried.isWhole()).isFalse();
        assertThat(carried.leavesOut(StockPlace.BENCH)).isTrue();
        assertThat(carried.leavesOut(StockPlace.SHELF)).isFalse();
        assertThat(carried.places().get(0).uses()).isEmpty();
    }

    @Test
    void holdsTheUsesThatWaitForAReceipt() {
        story.used(3, "7", VASE);
        Carried.AtPlace bench = carriedTo(day(4), 0).places().get(0);
        assertThat(bench.waiting()).hasSize(1);
        assertThat(bench.uses().get(bench.waiting().get(0)).waiting()).isEqualByComparingTo("2");
    }

    /** The second move is done on the first day, and the fourth on the third; each time the next day that begins is taken. */
    @Test
    void isMadeAfterSoManyMovesAtTheNextDay() {
        record(story.documents());
        assertThat(kept.carried()).extracting(Carried::day).containsExactly(day(2), day(5));
    }

    @Test
    void isWhereAChangeBegins() {
        record(story.documents());
        assertThat(followedFrom(6, Story.use("1", false, BOWL))).isEqualTo(day(5));
        assertThat(followedFrom(4, Story.use("1", false, BOWL))).isEqualTo(day(2));
    }

    /** The count settles the use of the third day, which the fifth has left out; the second had none to leave out. */
    @Test
    void isNotEnoughForACountOfWhatItLeavesOut() {
        record(story.documents());
        Move counted = new Move.Counted(PAINT, StockPlace.BENCH, quantity("4"), false);
        assertThat(followedFrom(6, counted)).isEqualTo(day(2));
        Move elsewhere = new Move.Counted(PAINT, StockPlace.SHELF, quantity("4"), false);
        assertThat(followedFrom(6, elsewhere)).isEqualTo(day(5));
    }

    /** With these sales the fourth move is done on the second day, so the third is carried forward to and the fifth is not. */
    @Test
    void isNotEnoughForWhatComesBackOfAnEarlierSale() {
        var early = story.soldRetail(2, "1");
        var late = story.soldRetail(5, "1");
        record(story.documents());
        assertThat(followedFrom(6, new Move.SupplyBack(PAINT, StockPlace.SHELF, quantity("1"), late)))
                .isEqualTo(day(3));
        assertThat(followedFrom(6, new Move.SupplyBack(PAINT, StockPlace.SHELF, quantity("1"), early)))
                .isEqualTo(day(1));
    }

    @Test
    void isNotEnoughForWhatIsMixedIntoAKeptPot() {
        record(story.documents());
        Destination pot = new Destination.Mix(List.of(), List.of(new PotShare(Story.name("pot"), quantity("1"))));
        assertThat(followedFrom(6, Story.out(StockPlace.BENCH, "1", false, pot)))
                .isEqualTo(day(1));
    }

    private Carried carriedTo(LocalDate day, int most) {
        List<StrandMove> moves = story.documents().stream()
                .flatMap(document -> Strands.of(document).stream())
                .toList();
        Carried wanted = new Carried(PAINT, day, List.of());
        return CarriedAnew.of(StockMethod.FIFO, PAINT, moves, List.of(wanted), most)
                .get(0);
    }

    private void record(List<DocumentMoves> documents) {
        Change change = new Change(
                documents.stream().map(document -> document.document().id()).toList(), documents, kept);
        kept.take(change, Rederivation.of(StockMethod.FIFO, kept, change));
    }

    /** The day of the first move that is read for a change of one move. */
    private LocalDate followedFrom(int day, Move move) {
        DocumentMoves document = new DocumentMoves(
                new DocumentRef(Story.name("change"), DocumentKind.BENCH_ENTRY, day(day)), List.of(move));
        Change change = new Change(List.of(document.document().id()), List.of(document), kept);
        return new Beginnings(kept, new CurrentMoves(kept, change), day(day))
                .moves(Set.of(PAINT)).stream()
                        .map(one -> one.document().date())
                        .min(LocalDate::compareTo)
                        .orElseThrow();
    }
}
