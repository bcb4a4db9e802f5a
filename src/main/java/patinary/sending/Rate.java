package patinary.sending;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import patinary.money.Amount;

/**
 * A row of her own table of what a carrier's service takes.
 *
 * @param validFrom the first day of the table that the row belongs to
 * @param upTo the most that a parcel may weigh, in grams
 * @param upToSize the largest that it may be, or nothing where size does not matter
 */
record Rate(LocalDate validFrom, BigDecimal upTo, Optional<BoxSize> upToSize, Amount cost) {

    /** A parcel whose size is not known fits only where size does not matter. */
    boolean takes(BigDecimal grams, Optional<BoxSize> size) {
        return grams.compareTo(upTo) <= 0
                && (upToSize.isEmpty()
                        || size.filter(box -> box.fitsIn(upToSize.get())).isPresent());
    }
}
