package patinary.spending;

import java.math.BigDecimal;
import java.util.UUID;

/**
 * A way that is driven often.
 *
 * @param purpose what it is usually driven for
 * @param milesOneWay from its start to its destination
 */
record SavedWay(UUID id, String startPlace, String destination, String purpose, BigDecimal milesOneWay, long version) {

    private static final BigDecimal THERE_AND_BACK = BigDecimal.valueOf(2);

    /** The miles of a trip over it. */
    public BigDecimal miles(boolean oneWay) {
        return oneWay ? milesOneWay : milesOneWay.multiply(THERE_AND_BACK);
    }
}
