package patinary.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.UnaryOperator;
import patinary.money.Amount;

/** The sums that stored postings must come to, whatever they say one by one. */
final class Balances {

    /** Where cost is, and where it goes when it leaves. */
    private static final Set<Account> COST = EnumSet.of(
            Account.PIECES,
            Account.BENCH,
            Account.SHELF,
            Account.COST_OF_PIECES,
            Account.COST_OF_RETAIL,
            Account.WRITE_OFFS,
            Account.FOUND_AT_COUNT,
            Account.OWN_USE,
            Account.EXPENSE);

    private Balances() {}

    static List<Finding> unbalanced(Map<UUID, List<Posting>> stored) {
        List<Finding> findings = new ArrayList<>();
        Amount ledger = Amount.ZERO;
        for (List<Posting> postings : stored.values()) {
            Amount sum = postings.stream().map(Posting::amount).collect(Amount.sum());
            ledger = ledger.plus(sum);
            if (!sum.isZero()) {
                DocumentRef document = postings.get(0).document();
                findings.add(
                        new Finding(Finding.What.DOCUMENT_BALANCE, document, "", "0", String.valueOf(sum.minor())));
            }
        }
        if (!ledger.isZero()) {
            findings.add(Finding.books(Finding.What.LEDGER_BALANCE, "", "0", ledger.minor()));
        }
        return findings;
    }

    /**
     * At every date, what documents brought in at cost, less what suppliers took back, is what is in stock plus what
     * left it. The left side is read from the documents alone, the right side from the stored postings alone. Sealed days are
     * taken together with the first day after them: their own rows are what was sealed, and another calculation may have
     * brought its documents in at another cost.
     *
     * @param sealed the last sealed day, or {@link LocalDate#MIN}
     */
    static List<Finding> costNotKept(List<DocumentMoves> documents, Map<UUID, List<Posting>> stored, LocalDate sealed) {
        UnaryOperator<LocalDate> open = day -> day.isAfter(sealed) ? day : sealed.plusDays(1);
        TreeMap<LocalDate, Amount> cameIn = new TreeMap<>();
        documents.forEach(document -> document.moves()
                .forEach(move -> cameIn.merge(open.apply(document.document().date()), cameIn(move), Amount::plus)));
        TreeMap<LocalDate, Amount> isThere = new TreeMap<>();
        stored.values().stream()
                .flatMap(Collection::stream)
                .filter(posting -> COST.contains(posting.account()))
                .forEach(posting ->
                        isThere.merge(open.apply(posting.document().date()), posting.amount(), Amount::plus));
        return compare(cameIn, isThere);
    }

    private static List<Finding> compare(TreeMap<LocalDate, Amount> cameIn, TreeMap<LocalDate, Amount> isThere) {
        TreeMap<LocalDate, Amount> dates = new TreeMap<>(cameIn);
        dates.putAll(isThere);
        Amount expected = Amount.ZERO;
        Amount found = Amount.ZERO;
        List<Finding> findings = new ArrayList<>();
        for (LocalDate date : dates.keySet()) {
            Amount before = expected.minus(found);
            expected = expected.plus(cameIn.getOrDefault(date, Amount.ZERO));
            found = found.plus(isThere.getOrDefault(date, Amount.ZERO));
            if (!expected.minus(found).equals(before)) {
                findings.add(Finding.books(Finding.What.COST_KEPT, date.toString(), expected.minor(), found.minor()));
            }
        }
        return findings;
    }

    private static Amount cameIn(Move move) {
        if (move instanceof Move.SupplyIn in) {
            return in.cost();
        }
        if (move instanceof Move.PieceIn in) {
            return in.cost();
        }
        return move instanceof Move.Post post && COST.contains(post.account()) ? post.amount() : Amount.ZERO;
    }
}
