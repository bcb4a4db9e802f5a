package patinary.spending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The miles of one vehicle in one year, as Part IV of Schedule C asks for them: for the business, to a steady place of work,
 * and all others. All use is what the odometer ran between the first and the last day (Temp. Treas. Reg. 1.274-5T(b)(6):
 * the miles of each business use and the total of all use). What is not known stays unknown: nothing is guessed.
 *
 * @param startReading what the odometer read on the first day
 * @param endReading what it read on the last day
 * @param business the miles of the trips
 * @param commuting the miles to a steady place of work, which are no business miles
 */
public record VehicleYear(
        UUID vehicleId,
        String vehicle,
        @Nullable LocalDate inService,
        int year,
        @Nullable BigDecimal startReading,
        @Nullable BigDecimal endReading,
        BigDecimal business,
        @Nullable BigDecimal commuting) {

    /** What the odometer ran, or null while a reading is missing. */
    public @Nullable BigDecimal total() {
        return startReading == null || endReading == null ? null : endReading.subtract(startReading);
    }

    /** What is left for all other use, or null while a part is missing; below zero where the parts are too many. */
    public @Nullable BigDecimal other() {
        BigDecimal total = total();
        return total == null || commuting == null
                ? null
                : total.subtract(business).subtract(commuting);
    }

    /** How many miles the trips and the way to work are more than the odometer ran; zero where they fit or nobody knows. */
    public BigDecimal over() {
        BigDecimal total = total();
        if (total == null) {
            return BigDecimal.ZERO;
        }
        BigDecimal known = commuting == null ? business : business.add(commuting);
        return known.subtract(total).max(BigDecimal.ZERO);
    }
}
