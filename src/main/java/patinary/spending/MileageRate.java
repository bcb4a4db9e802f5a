package patinary.spending;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import patinary.money.Amount;

/**
 * One dated rate.
 *
 * @param jurisdiction ISO 3166 country code of the tax office
 * @param from the first day it holds
 * @param to the last day it holds
 * @param tenthsOfACent tenths of a minor unit for each unit of distance, since rates have half cents
 * @param unit of distance, {@code mile} or {@code km}
 * @param source the notice that set it
 * @param status how well the source is known; shown beside the figure
 */
public record MileageRate(
        String jurisdiction,
        LocalDate from,
        LocalDate to,
        BigDecimal tenthsOfACent,
        String unit,
        String source,
        String status) {

    /** Whether the rate holds on this day; first and last day included. */
    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    /**
     * What so many units of distance come to: rounded half up to the cent, once.
     *
     * @throws IllegalArgumentException where the distance is below zero
     */
    public Amount amountFor(BigDecimal distance) {
        if (distance.signum() < 0) {
            throw new IllegalArgumentException("A trip is not shorter than nothing: " + distance);
        }
        return Amount.of(tenthsOfACent
                .multiply(distance)
                .movePointLeft(1)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }
}
