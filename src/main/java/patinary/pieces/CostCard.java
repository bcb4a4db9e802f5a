package patinary.pieces;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;
import patinary.money.Percent;

/** All that is known of what a piece cost and, once sold, brought. */
record CostCard(
        PieceFigures figures,
        List<CostLine> lines,
        List<Waiting> waiting,
        List<TripPart> trips,
        List<Part> parts,
        TrueCost trueCost) {

    /** A use that no receipt has given a cost yet. */
    record Waiting(UUID benchEntryId, LocalDate date, String supply) {}

    /** Its share of a buying trip. */
    record TripPart(UUID tripId, LocalDate date, String purpose, Amount whole, int pieces, Amount share) {}

    /** Another piece of the same joining or splitting, with the minutes that stay noted on it. */
    record Part(UUID pieceId, String code, String title, UUID regroupingId, boolean fromSide, BigDecimal minutes) {}

    /** Minutes of work as a whole number, for reading. */
    public long wholeMinutes() {
        return figures.minutes().setScale(0, java.math.RoundingMode.HALF_UP).longValueExact();
    }

    public List<CostBar.Part> bar() {
        return CostBar.of(List.of(
                new CostBar.Slice("purchase", Amount.of(figures.purchaseMinor())),
                new CostBar.Slice("parts", Amount.of(figures.regroupedMinor())),
                new CostBar.Slice("supplies", Amount.of(figures.suppliesMinor())),
                new CostBar.Slice("work", trueCost.work()),
                new CostBar.Slice("trip", trueCost.trip())));
    }

    public Earnings earnings() {
        return figures.earnings();
    }

    public @Nullable Percent margin() {
        return earnings().margin().orElse(null);
    }

    public @Nullable Percent returnOnCost() {
        return earnings().returnOnCost().orElse(null);
    }

    public @Nullable Amount perHour() {
        return earnings().perHour(figures.minutes()).orElse(null);
    }

    /** What is left of the profit once her time and the trip are paid for. */
    public Amount afterTrueCost() {
        return earnings().profit().minus(trueCost.work()).minus(trueCost.trip());
    }
}
