package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.UUID;
import patinary.money.Amount;

/**
 * The money that lay in one piece over some days.
 *
 * @param unitDays its cost at the end of each day, added up over the days, in minor units
 * @param closing its cost at the end of the last day
 * @param age days since it was found, on the last day
 */
record StockOfPiece(UUID piece, BigDecimal unitDays, Amount closing, long age) {

    /** A change of what a piece costs in stock; minor units. */
    record Change(LocalDate day, long amount) {}

    /** @param changes all changes up to the last day */
    static StockOfPiece of(UUID piece, LocalDate found, Collection<Change> changes, LocalDate first, LocalDate last) {
        BigDecimal unitDays = BigDecimal.ZERO;
        Amount closing = Amount.ZERO;
        for (Change change : changes) {
            LocalDate from = change.day().isBefore(first) ? first : change.day();
            long days = ChronoUnit.DAYS.between(from, last) + 1;
            unitDays = unitDays.add(BigDecimal.valueOf(change.amount()).multiply(BigDecimal.valueOf(days)));
            closing = closing.plus(Amount.of(change.amount()));
        }
        return new StockOfPiece(piece, unitDays, closing, Math.max(0, ChronoUnit.DAYS.between(found, last)));
    }
}
