package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** Collects postings in the order in which they arise and knows which document is at work. */
final class Journal {

    private static final DocumentRef NOTHING = new DocumentRef(new UUID(0, 0), DocumentKind.OPENING, LocalDate.MIN);

    private final List<Posting> postings = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private DocumentMoves current = new DocumentMoves(NOTHING, List.of());
    private Amount balance = Amount.ZERO;

    void open(DocumentMoves document) {
        current = document;
        balance = Amount.ZERO;
    }

    void close() {
        if (!balance.isZero()) {
            problem(Problem.Reason.UNBALANCED, null);
        }
    }

    DocumentRef document() {
        return current.document();
    }

    void post(Account account, Tags tags, Amount amount) {
        if (!amount.isZero()) {
            add(new Posting(document(), account, own(tags), amount));
        }
    }

    void stock(StockPlace place, Tags tags, BigDecimal quantity, Amount amount) {
        if (!amount.isZero() || quantity.signum() != 0) {
            add(new Posting(document(), place.account(), own(tags), amount, quantity));
        }
    }

    void problem(Problem.Reason reason, @Nullable UUID subject) {
        problems.add(new Problem(document(), reason, subject));
    }

    List<Posting> postings() {
        return postings;
    }

    List<Problem> problems() {
        return problems;
    }

    private void add(Posting posting) {
        postings.add(posting);
        balance = balance.plus(posting.amount());
    }

    /** Where an amount belongs to the document that posts it, naming that document again as its origin says nothing. */
    private Tags own(Tags tags) {
        return document().id().equals(tags.origin()) ? tags.withOrigin(null) : tags;
    }
}
