package patinary.buying;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Tender;
import patinary.money.Amount;

/**
 * Everything a receipt says.
 *
 * @param date the day at the till
 * @param note free text
 * @param sourceId where it was bought
 * @param tripId the trip on which it was bought
 * @param tillTotal the total printed on it
 * @param lines what was bought
 * @param pieces the pieces that lines brought
 * @param charges discounts, taxes, shipping and the like
 * @param chargeLines which lines a charge applies to, where not all
 * @param payments how it was paid; adds up to the total
 */
public record ReceiptContent(
        LocalDate date,
        String note,
        @Nullable UUID sourceId,
        @Nullable UUID tripId,
        Amount tillTotal,
        List<ReceiptLine> lines,
        List<ReceiptPiece> pieces,
        List<ReceiptCharge> charges,
        List<ChargeLine> chargeLines,
        List<Tender> payments) {

    public ReceiptSums sums() {
        return ReceiptSums.of(lines, charges, chargeLines);
    }
}
