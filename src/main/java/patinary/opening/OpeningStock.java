package patinary.opening;

import java.util.List;
import org.jspecify.annotations.Nullable;
import patinary.ledger.StockPlace;
import patinary.money.Amount;

/**
 * The stock the books begin with, held against what last year's records ended with. The two should be the same figure:
 * the opening line of a tax year is the closing line of the year before.
 *
 * @param pieces cost of the pieces on the shelf
 * @param bench cost of the supplies on the bench
 * @param shelf cost of the supplies on the retail shelf
 * @param estimated how much of all that is guessed
 * @param unknown how many pieces have no known cost
 * @param lastClosing what last year's records say, or null where that was not typed
 */
record OpeningStock(
        Amount pieces,
        Amount bench,
        Amount shelf,
        Amount estimated,
        long unknown,
        @Nullable Amount lastClosing) {

    static OpeningStock of(Opening.Content opening) {
        Amount guessed = opening.pieces().stream()
                .filter(piece -> !piece.known())
                .map(Opening.OpeningPiece::cost)
                .collect(Amount.sum());
        Amount about = opening.supplies().stream()
                .filter(Opening.OpeningSupply::about)
                .map(Opening.OpeningSupply::cost)
                .collect(Amount.sum());
        return new OpeningStock(
                opening.pieces().stream().map(Opening.OpeningPiece::cost).collect(Amount.sum()),
                at(opening.supplies(), StockPlace.BENCH),
                at(opening.supplies(), StockPlace.SHELF),
                guessed.plus(about),
                opening.pieces().stream().filter(piece -> !piece.known()).count(),
                opening.lastClosing());
    }

    public Amount total() {
        return pieces.plus(bench).plus(shelf);
    }

    /** The sum here less last year's closing total; null where none was typed. */
    public @Nullable Amount difference() {
        return lastClosing == null ? null : total().minus(lastClosing);
    }

    private static Amount at(List<Opening.OpeningSupply> supplies, StockPlace place) {
        return supplies.stream()
                .filter(supply -> supply.place() == place)
                .map(Opening.OpeningSupply::cost)
                .collect(Amount.sum());
    }
}
