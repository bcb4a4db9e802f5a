package patinary.ledger;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** Rebuilds the books from the documents and compares them with what is stored; changes nothing. */
@Service
public class Check {

    private final Documents documents;
    private final PostingStore postings;
    private final StrandStore strands;
    private final UncostedStore uncosted;
    private final CarriedCheck carried;
    private final SealStore sealed;
    private final BooksSettings settings;
    private final List<AlsoChecked> others;

    Check(
            Documents documents,
            PostingStore postings,
            StrandStore strands,
            UncostedStore uncosted,
            CarriedCheck carried,
            SealStore sealed,
            BooksSettings settings,
            List<AlsoChecked> others) {
        this.documents = documents;
        this.postings = postings;
        this.strands = strands;
        this.uncosted = uncosted;
        this.carried = carried;
        this.sealed = sealed;
        this.settings = settings;
        this.others = others;
    }

    /** Everything that is not as it must be, in canonical order; empty where the books are right. */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public List<Finding> run() {
        List<DocumentMoves> moves = documents.moves();
        Map<UUID, List<Entry>> entries = postings.all();
        Replay.Result replay = Replay.of(settings.stockMethod(), moves);
        List<Finding> findings = new ArrayList<>();
        replay.problems().forEach(problem -> findings.add(Finding.problem(problem)));
        List<Entry> books = SealedPostings.laidOver(documents.seals(), sealed.all(), replay.entries());
        Map<UUID, List<Entry>> derived = PostingStore.grouped(books);
        findings.addAll(
                strands.isKept()
                        ? differences(moves, entries, derived)
                        : differences(moves, withoutMoves(entries), withoutMoves(derived)));
        Map<UUID, List<Posting>> stored = postings(entries);
        findings.addAll(Balances.unbalanced(stored));
        findings.addAll(
                Balances.costNotKept(moves, stored, documents.sealedUpTo().orElse(LocalDate.MIN)));
        findings.addAll(StockCheck.differences(replay, stored));
        findings.addAll(uncosted(replay));
        findings.addAll(strands(moves));
        findings.addAll(carried.findings(moves));
        others.forEach(other -> findings.addAll(other.findings()));
        return findings;
    }

    private static Map<UUID, List<Posting>> postings(Map<UUID, List<Entry>> entries) {
        Map<UUID, List<Posting>> result = new LinkedHashMap<>();
        entries.forEach((document, list) ->
                result.put(document, list.stream().map(Entry::posting).toList()));
        return result;
    }

    /** In a shop from before, no posting says which move it comes from until the next change. */
    private static Map<UUID, List<Entry>> withoutMoves(Map<UUID, List<Entry>> entries) {
        Map<UUID, List<Entry>> result = new HashMap<>();
        entries.forEach((document, list) -> result.put(
                document,
                list.stream().map(entry -> new Entry(entry.posting(), 0, null)).toList()));
        return result;
    }

    /** A shop from before strands were kept has none until its next change. */
    private List<Finding> strands(List<DocumentMoves> moves) {
        if (!strands.isKept()) {
            return List.of();
        }
        Map<String, Integer> counts = new HashMap<>();
        moves.stream()
                .flatMap(document -> Strands.of(document).stream())
                .forEach(move -> counts.merge(text(move), 1, Integer::sum));
        strands.all().forEach(move -> counts.merge(text(move), -1, Integer::sum));
        return findings(Finding.What.STRAND, counts);
    }

    private static List<Finding> differences(
            List<DocumentMoves> moves, Map<UUID, List<Entry>> stored, Map<UUID, List<Entry>> derived) {
        List<Finding> findings = new ArrayList<>();
        moves.stream().map(DocumentMoves::document).sorted().forEach(document -> {
            List<Entry> is = stored.getOrDefault(document.id(), List.of());
            List<Entry> should = derived.getOrDefault(document.id(), List.of());
            for (int line = 0; line < Math.max(is.size(), should.size()); line++) {
                String found = line < is.size() ? text(is.get(line)) : "-";
                String expected = line < should.size() ? text(should.get(line)) : "-";
                if (line >= is.size() || line >= should.size() || !is.get(line).equals(should.get(line))) {
                    findings.add(
                            new Finding(Finding.What.POSTING, document, String.valueOf(line + 1), expected, found));
                }
            }
        });
        return findings;
    }

    private List<Finding> uncosted(Replay.Result replay) {
        Map<String, Integer> counts = new HashMap<>();
        replay.uncosted().forEach(use -> counts.merge(text(use), 1, Integer::sum));
        uncosted.all().forEach(use -> counts.merge(text(use), -1, Integer::sum));
        return findings(Finding.What.UNCOSTED, counts);
    }

    private static List<Finding> findings(Finding.What what, Map<String, Integer> counts) {
        return counts.entrySet().stream()
                .filter(entry -> entry.getValue() != 0)
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> Finding.books(
                        what,
                        entry.getKey(),
                        entry.getValue() > 0 ? "there" : "not there",
                        entry.getValue() > 0 ? "not there" : "there"))
                .toList();
    }

    private static String text(Entry entry) {
        Posting posting = entry.posting();
        Tags tags = posting.tags();
        StringBuilder text =
                new StringBuilder(posting.account() + " " + posting.amount().minor());
        if (posting.quantity().signum() != 0) {
            text.append(" quantity ").append(posting.quantity().toPlainString());
        }
        append(text, "category", tags.category());
        append(text, "place", tags.place());
        append(text, "piece", tags.piece());
        append(text, "supply", tags.supply());
        append(text, "party", tags.party());
        append(text, "origin", tags.origin());
        append(text, "meant for", entry.meant());
        append(text, "move", entry.move());
        return (tags.estimated() ? text.append(" estimated") : text).toString();
    }

    private static String text(StrandMove move) {
        return move.strand() + " " + move.document() + " " + move.number() + " " + MoveText.of(move.move());
    }

    private static void append(StringBuilder text, String name, @org.jspecify.annotations.Nullable Object value) {
        if (value != null) {
            text.append(' ').append(name).append(' ').append(value);
        }
    }

    private static String text(Replay.Uncosted use) {
        return use.document().id() + " " + use.supply() + " " + use.place() + " "
                + use.quantity().stripTrailingZeros().toPlainString() + (use.throughPot() ? " through its pot" : "");
    }
}
