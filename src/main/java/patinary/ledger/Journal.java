package patinary.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** Collects postings in the order in which they arise and knows which document, and which of its moves, is at work. */
final class Journal {

    private static final DocumentRef NOTHING = new DocumentRef(new UUID(0, 0), DocumentKind.OPENING, LocalDate.MIN);

    private final List<Entry> entries = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private DocumentRef current = NOTHING;
    private int move;
    private @Nullable UUID meant;
    private Amount balance = Amount.ZERO;

    void open(DocumentRef document) {
        current = document;
        balance = Amount.ZERO;
    }

    /** What follows comes from this one of the document's moves. */
    void move(int number) {
        move = number;
    }

    /** What follows lands elsewhere than on the piece that it is meant for; null ends it. */
    void meant(@Nullable UUID piece) {
        meant = piece;
    }

    boolean isMeantElsewhere() {
        return meant != null;
    }

    void close() {
        if (!balance.isZero()) {
            problem(Problem.Reason.UNBALANCED, null);
        }
    }

    DocumentRef document() {
        return current;
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

    List<Entry> entries() {
        return entries;
    }

    /** Hands out what was posted so far, and begins anew. */
    List<Entry> take() {
        List<Entry> taken = List.copyOf(entries);
        entries.clear();
        return taken;
    }

    /** Takes over what was posted before, as it was. */
    void keep(Entry entry) {
        entries.add(entry);
        balance = balance.plus(entry.posting().amount());
    }

    List<Problem> problems() {
        return problems;
    }

    private void add(Posting posting) {
        keep(new Entry(posting, move, meant));
    }

    /** Where an amount belongs to the document that posts it, naming that document again as its origin says nothing. */
    private Tags own(Tags tags) {
        return document().id().equals(tags.origin()) ? tags.withOrigin(null) : tags;
    }
}
