package patinary.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static patinary.ledger.Story.BOWL;
import static patinary.ledger.Story.TRAY;
import static patinary.ledger.Story.VASE;
import static patinary.ledger.Story.cents;
import static patinary.ledger.Story.share;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Story.Told;

class PiecesTest {

    private static final UUID SET = Story.name("set");

    private final Story story = new Story();

    @Test
    void soldReturnedSoldAgainAndLetGo() {
        story.boughtPiece(1, BOWL, 500);
        story.sold(2, BOWL);
        story.returned(3, BOWL);
        story.sold(4, BOWL);
        story.returned(5, BOWL);
        story.letGo(6, BOWL, Account.WRITE_OFFS);
        Told told = story.told();
        assertThat(told.problems()).isEmpty();
        assertThat(List.of(
                        told.on(2, Account.COST_OF_PIECES),
                        told.on(3, Account.COST_OF_PIECES),
                        told.on(4, Account.COST_OF_PIECES),
                        told.on(5, Account.COST_OF_PIECES)))
                .containsExactly(500L, -500L, 500L, -500L);
        assertThat(told.on(6, Account.WRITE_OFFS)).isEqualTo(500);
        assertThat(told.result().pieces()).isEmpty();
    }

    @Test
    void soldTwiceIsRefused() {
        story.boughtPiece(1, BOWL, 500);
        story.sold(2, BOWL);
        UUID second = story.sold(3, BOWL);
        assertThat(story.told().result().problems())
                .containsExactly(new Problem(
                        new DocumentRef(second, DocumentKind.SALE, Story.day(3)),
                        Problem.Reason.PIECE_ALREADY_GONE,
                        BOWL));
        assertThat(story.told().on(Account.COST_OF_PIECES)).isEqualTo(500);
    }

    @Test
    void soldAfterItWasLetGoIsRefused() {
        story.boughtPiece(1, BOWL, 500);
        story.letGo(2, BOWL, Account.OWN_USE);
        story.sold(3, BOWL);
        assertThat(story.told().problems()).containsExactly(Problem.Reason.PIECE_ALREADY_GONE);
    }

    @Test
    void aSecondReturnOutOfAnOldSaleDoesNotUndoTheNewerOne() {
        story.boughtPiece(1, BOWL, 500);
        UUID first = story.sold(2, BOWL);
        story.returned(3, BOWL, first);
        story.sold(4, BOWL);
        story.returned(5, BOWL, first);
        assertThat(story.told().problems()).containsExactly(Problem.Reason.PIECE_NOT_SOLD);
    }

    @Test
    void returnOfWhatWasNotSoldIsRefused() {
        story.boughtPiece(1, BOWL, 500);
        story.returned(2, BOWL);
        story.letGo(3, BOWL, Account.WRITE_OFFS);
        story.returned(4, BOWL);
        assertThat(story.told().problems())
                .containsExactly(Problem.Reason.PIECE_NOT_SOLD, Problem.Reason.PIECE_NOT_SOLD);
    }

    @Test
    void joiningAddsTheCosts() {
        story.boughtPiece(1, BOWL, 500);
        story.boughtPiece(1, TRAY, 250);
        story.regrouped(2, List.of(BOWL, TRAY), share(SET, "1"));
        story.sold(3, SET);
        Told told = story.told();
        assertThat(told.on(Account.COST_OF_PIECES, SET)).isEqualTo(750);
        assertThat(told.on(Account.PIECES, BOWL)).isZero();
        assertThat(told.result().pieces()).isEmpty();
    }

    @Test
    void splittingSharesByWeightToTheCent() {
        story.boughtPiece(1, SET, 1_000);
        story.regrouped(2, List.of(SET), share(BOWL, "1"), share(TRAY, "2"));
        assertThat(story.told().result().pieces())
                .containsOnly(Map.entry(BOWL, cents(333)), Map.entry(TRAY, cents(667)));
    }

    @Test
    void pieceMayRemainWhenPartOfItIsSplitOff() {
        story.boughtPiece(1, BOWL, 1_000);
        story.regrouped(2, List.of(BOWL), share(BOWL, "3"), share(VASE, "1"));
        story.bought(3, "1", 100);
        story.used(3, "1", BOWL);
        assertThat(story.told().result().pieces())
                .containsOnly(Map.entry(BOWL, cents(850)), Map.entry(VASE, cents(250)));
    }

    @Test
    void laterCostOfAJoinedPieceFollowsIntoTheSet() {
        story.used(1, "1", BOWL);
        story.regrouped(2, List.of(BOWL, TRAY), share(SET, "1"));
        story.sold(3, SET);
        story.bought(4, "1", 90);
        assertThat(story.told().on(4, Account.COST_OF_PIECES)).isEqualTo(90);
    }

    @Test
    void laterCostOfASplitPieceIsSharedLikeIt() {
        story.used(1, "1", SET);
        story.regrouped(2, List.of(SET), share(BOWL, "1"), share(TRAY, "2"));
        story.bought(4, "1", 90);
        assertThat(story.told().result().pieces()).containsOnly(Map.entry(BOWL, cents(30)), Map.entry(TRAY, cents(60)));
    }

    /** A set that did not sell is broken up into the very pieces it was made of. */
    @Test
    void setCanBeBrokenUpIntoItsPiecesAgain() {
        story.boughtPiece(1, BOWL, 500);
        story.boughtPiece(1, TRAY, 300);
        story.regrouped(2, List.of(BOWL, TRAY), share(SET, "1"));
        story.regrouped(3, List.of(SET), share(BOWL, "5"), share(TRAY, "3"));
        story.bought(4, "1", 100);
        story.used(5, "1", BOWL);
        story.sold(6, TRAY);
        Told told = story.told();
        assertThat(told.problems()).isEmpty();
        assertThat(told.result().pieces()).containsOnly(Map.entry(BOWL, cents(600)));
        assertThat(told.on(Account.COST_OF_PIECES)).isEqualTo(300);
    }

    @Test
    void joinedPieceCannotBeSoldOrJoinedAgain() {
        story.boughtPiece(1, BOWL, 500);
        story.regrouped(2, List.of(BOWL, TRAY), share(SET, "1"));
        story.sold(3, BOWL);
        story.regrouped(4, List.of(VASE, BOWL), share(Story.name("other set"), "1"));
        Told told = story.told();
        assertThat(told.problems())
                .containsExactly(Problem.Reason.PIECE_ALREADY_GONE, Problem.Reason.PIECE_ALREADY_GONE);
    }

    /** What is refused posts nothing by halves. */
    @Test
    void regroupingIntoASoldPieceIsRefusedWhole() {
        story.boughtPiece(1, BOWL, 500);
        story.boughtPiece(1, TRAY, 300);
        story.sold(2, TRAY);
        UUID regrouping = story.regrouped(3, List.of(BOWL), share(TRAY, "1"));
        UUID other = story.regrouped(4, List.of(BOWL, TRAY), share(SET, "1"));
        Told told = story.told();
        assertThat(told.problems())
                .containsExactly(Problem.Reason.PIECE_ALREADY_GONE, Problem.Reason.PIECE_ALREADY_GONE);
        assertThat(told.postings().map(p -> p.document().id())).doesNotContain(regrouping, other);
    }

    @Test
    void estimatedCostStaysMarkedThroughJoiningAndSplitting() {
        story.boughtPiece(1, BOWL, 500);
        story.boughtAtAbout(1, "1", 100);
        story.used(2, "1", BOWL);
        story.regrouped(3, List.of(BOWL), share(TRAY, "1"), share(VASE, "1"));
        story.sold(4, TRAY);
        Told told = story.told();
        assertThat(told.on(Account.COST_OF_PIECES)).isEqualTo(300);
        assertThat(told.estimatedOn(Account.COST_OF_PIECES)).isEqualTo(50);
        assertThat(told.estimatedOn(Account.PIECES)).isEqualTo(50);
    }
}
