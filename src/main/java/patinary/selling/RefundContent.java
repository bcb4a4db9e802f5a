package patinary.selling;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.ledger.Way;
import patinary.money.Amount;

/**
 * Everything a refund says.
 *
 * @param date the day the money went back
 * @param note why
 * @param saleId the sale it belongs to
 * @param way from a money place, off what is still owed, or as store credit
 * @param placeId the money place
 * @param shipping shipping given back, without tax
 * @param tax sales tax given back
 * @param feeBack fee that the channel returned
 * @param feePlaceId where the returned fee went
 * @param lines what was given back for each thing
 */
public record RefundContent(
        LocalDate date,
        String note,
        UUID saleId,
        Way way,
        @Nullable UUID placeId,
        Amount shipping,
        Amount tax,
        Amount feeBack,
        @Nullable UUID feePlaceId,
        List<RefundLine> lines) {

    /** All that the buyer gets back. */
    public Amount total() {
        return lines.stream()
                .map(RefundLine::amount)
                .collect(Amount.sum())
                .plus(shipping)
                .plus(tax);
    }
}
