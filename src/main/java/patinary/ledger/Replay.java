package patinary.ledger;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import patinary.money.Amount;

/**
 * Turns documents into postings: the whole of costing as one pure function. Documents are taken in canonical order,
 * whatever order they were typed in, and nothing is ever posted to a date before the document that causes it; a year
 * whose documents do not change therefore never changes. This is the definition that {@link Rederivation} comes to for a
 * part of the documents.
 */
public final class Replay {

    /**
     * What a replay found.
     *
     * @param entries all postings, in canonical order, with the moves that they come from
     * @param problems documents that cannot be carried out beside the others
     * @param uncosted uses that no receipt has given a cost yet
     * @param stock quantity and cost left of each supply at each place
     * @param pieces landed cost of each piece in stock
     */
    public record Result(
            List<Entry> entries,
            List<Problem> problems,
            List<Uncosted> uncosted,
            List<StockLeft> stock,
            Map<UUID, Amount> pieces) {

        public List<Posting> postings() {
            return entries.stream().map(Entry::posting).toList();
        }
    }

    /**
     * A quantity, in the supply's base unit, whose cost is not known yet, or not all of it.
     *
     * @param throughPot whether the supply is a kept pot that is there, and something in it was used before it was bought
     */
    public record Uncosted(
            DocumentRef document, UUID supply, StockPlace place, BigDecimal quantity, boolean throughPot) {}

    /** What is left: the quantity is below zero where more was used than bought. */
    public record StockLeft(UUID supply, StockPlace place, BigDecimal quantity, Amount cost) {}

    private final Journal journal = new Journal();
    private final PieceBook pieces = new PieceBook(journal);
    private final MoneyBook money = new MoneyBook(journal);
    private final SupplyBooks supplies;

    private Replay(StockMethod method) {
        supplies = new SupplyBooks(method, journal, pieces);
    }

    public static Result of(StockMethod method, Collection<DocumentMoves> documents) {
        Replay replay = new Replay(method);
        documents.stream().sorted(Comparator.comparing(DocumentMoves::document)).forEach(replay::carryOut);
        return replay.result();
    }

    private void carryOut(DocumentMoves document) {
        journal.open(document.document());
        for (int number = 0; number < document.moves().size(); number++) {
            journal.move(number);
            carryOut(document.moves().get(number));
        }
        journal.close();
    }

    private void carryOut(Move move) {
        if (move instanceof Move.Post post) {
            journal.post(post.account(), post.tags(), post.amount());
            money.follow(post);
        } else if (move instanceof Move.MoneyCounted counted) {
            money.count(counted);
        } else if (Strands.isOfPieces(move)) {
            pieces.carryOut(move);
        } else {
            supplies.carryOut(move);
        }
    }

    private Result result() {
        return new Result(
                List.copyOf(journal.entries()),
                List.copyOf(journal.problems()),
                supplies.uncosted(),
                supplies.left(),
                pieces.inStock());
    }
}
