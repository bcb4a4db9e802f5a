package patinary.taxbasis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import patinary.ledger.Account;
import patinary.ledger.DocumentKind;
import patinary.money.Amount;
import patinary.taxbasis.SuppliesInPieces.PiecePosting;

/** The part of supplies in pieces, followed by hand. */
class SuppliesInPiecesTest {

    private static final UUID TRAY = new UUID(0, 1);
    private static final UUID BOWL = new UUID(0, 2);
    private static final UUID SET = new UUID(0, 3);

    private final List<PiecePosting> postings = new ArrayList<>();
    private int document;

    @Test
    void whatWasBoughtIsNoSupply() {
        bought(TRAY, 1000);
        used(Account.PIECES, TRAY, 300);
        assertThat(SuppliesInPieces.of(postings)).isEqualTo(Map.of(TRAY, Amount.of(300)));
    }

    @Test
    void whatIsSoldIsGoneAndWhatComesBackIsThereAgain() {
        bought(TRAY, 1000);
        used(Account.PIECES, TRAY, 300);
        moved(Account.PIECES, Account.COST_OF_PIECES, 1300);
        assertThat(SuppliesInPieces.of(postings)).isEmpty();
        used(Account.COST_OF_PIECES, TRAY, 20);
        moved(Account.COST_OF_PIECES, Account.PIECES, 1320);
        assertThat(SuppliesInPieces.of(postings))
                .as("with what reached it while it was away")
                .isEqualTo(Map.of(TRAY, Amount.of(320)));
    }

    /** 300 + 100 of supplies go into a set and are split by cost, 1,500 to 500. */
    @Test
    void piecesThatAreJoinedTakeItAlong() {
        bought(TRAY, 1000);
        bought(BOWL, 600);
        used(Account.PIECES, TRAY, 300);
        used(Account.PIECES, BOWL, 100);
        document++;
        add(DocumentKind.REGROUPING, Account.PIECES, TRAY, false, -1300);
        add(DocumentKind.REGROUPING, Account.PIECES, BOWL, false, -700);
        add(DocumentKind.REGROUPING, Account.PIECES, SET, false, 2000);
        assertThat(SuppliesInPieces.of(postings)).isEqualTo(Map.of(SET, Amount.of(400)));
        document++;
        add(DocumentKind.REGROUPING, Account.PIECES, SET, false, -2000);
        add(DocumentKind.REGROUPING, Account.PIECES, TRAY, false, 1500);
        add(DocumentKind.REGROUPING, Account.PIECES, BOWL, false, 500);
        assertThat(SuppliesInPieces.of(postings)).isEqualTo(Map.of(TRAY, Amount.of(300), BOWL, Amount.of(100)));
    }

    @Test
    void aCountThatCorrectsAUseCorrectsThePart() {
        bought(TRAY, 1000);
        used(Account.PIECES, TRAY, 300);
        used(Account.PIECES, TRAY, -120);
        assertThat(SuppliesInPieces.of(postings)).isEqualTo(Map.of(TRAY, Amount.of(180)));
    }

    private void bought(UUID piece, long amount) {
        document++;
        add(DocumentKind.RECEIPT, Account.PIECES, piece, false, amount);
    }

    private void used(Account account, UUID piece, long amount) {
        document++;
        add(DocumentKind.BENCH_ENTRY, account, piece, true, amount);
    }

    private void moved(Account from, Account to, long amount) {
        document++;
        add(DocumentKind.SALE, from, TRAY, false, -amount);
        add(DocumentKind.SALE, to, TRAY, false, amount);
    }

    private void add(DocumentKind kind, Account account, UUID piece, boolean supply, long amount) {
        postings.add(new PiecePosting(new UUID(1, document), kind, account, piece, supply, Amount.of(amount)));
    }
}
