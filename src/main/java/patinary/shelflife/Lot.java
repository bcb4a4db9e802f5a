package patinary.shelflife;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.measure.Dimension;

/**
 * What one document brought in of a supply, and how it keeps.
 *
 * @param kind of the document: RECEIPT, OPENING, or BENCH_ENTRY for a pot that was kept
 * @param leftQuantity what is likely left of it, the oldest lot having gone first
 * @param openedOn when its container was opened
 * @param useBy the day on its label, or that of the pot
 * @param daysOpened how long the supply keeps once opened
 */
record Lot(
        UUID documentId,
        UUID supplyId,
        String name,
        Dimension dimension,
        String kind,
        LocalDate cameOn,
        BigDecimal quantity,
        BigDecimal leftQuantity,
        @Nullable LocalDate openedOn,
        @Nullable LocalDate useBy,
        @Nullable Integer daysOpened) {

    /** What is used up in these days is used soon; a rule of thumb, no source. */
    static final int SOON = 14;

    /** How a lot stands on a day. */
    enum Standing {
        PAST,
        SOON,
        GOOD,
        UNKNOWN
    }

    /** The earlier of the label's day and the last day after opening, or nothing where neither is known. */
    Optional<LocalDate> best() {
        LocalDate afterOpening = openedOn == null || daysOpened == null ? null : openedOn.plusDays(daysOpened);
        return Stream.of(Optional.ofNullable(useBy), Optional.ofNullable(afterOpening))
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder());
    }

    Standing standing(LocalDate today) {
        return best().map(day -> day.isBefore(today)
                        ? Standing.PAST
                        : day.isAfter(today.plusDays(SOON)) ? Standing.GOOD : Standing.SOON)
                .orElse(Standing.UNKNOWN);
    }

    boolean isPot() {
        return kind.equals("BENCH_ENTRY");
    }

    boolean isLeft() {
        return leftQuantity.signum() > 0;
    }
}
