package patinary.pieces;

import java.math.BigDecimal;
import java.math.RoundingMode;
import patinary.money.Amount;

/**
 * What a piece really took: money, her time at her own rate, and the way to the shop. For her own judgement only; it is
 * never part of a tax figure. docs/handbook/cost-card.md works it through.
 *
 * @param landed all the money in the piece
 * @param work her minutes at her own hourly rate, rounded half up once
 * @param trip its share of the buying trips
 */
record TrueCost(Amount landed, Amount work, Amount trip) {

    private static final BigDecimal MINUTES_OF_AN_HOUR = BigDecimal.valueOf(60);

    static TrueCost of(Amount landed, BigDecimal minutes, Amount hourlyRate, Amount trip) {
        return new TrueCost(landed, hourlyRate.part(minutes, MINUTES_OF_AN_HOUR, RoundingMode.HALF_UP), trip);
    }

    public Amount total() {
        return landed.plus(work).plus(trip);
    }
}
