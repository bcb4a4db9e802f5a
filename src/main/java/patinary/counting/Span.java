package patinary.counting;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What happened to a supply on the bench between two counts. All quantities in the supply's base unit; they go into
 * statistics only, never into the books.
 *
 * @param count the count that ends it
 * @param since the day of the count before; null where there was none
 * @param until the day of the count
 * @param uses what was taken by eye
 * @param notedThen what the books had noted for them
 * @param used what was really taken by eye, as the count says: what was noted, less what the count found over
 * @param step the step in which the two counts were read off, 0 where they were measured
 * @param waste she said that what was missing was waste, so the count tells nothing about her eye
 */
record Span(
        UUID count,
        @Nullable LocalDate since,
        LocalDate until,
        List<Use> uses,
        double notedThen,
        double used,
        double step,
        boolean waste) {

    /**
     * One use by eye.
     *
     * @param measure the measure of hers it was told in; empty where it was told in a unit or in parts of a pack
     * @param times how many of the measure
     * @param noted the quantity it stands for with the measure as large as it is now
     */
    record Use(String measure, double times, double noted) {

        /** Grows with how much chance there is in the use: three dabs are three judgements, ten ml is one. */
        double squares() {
            return measure.isEmpty() || times == 0 ? noted * noted : noted * noted / times;
        }
    }

    /** What was used for each one noted, at the sizes that held then; the measures' sizes today play no part. */
    double stretch() {
        return used / notedThen;
    }

    double noted() {
        return uses.stream().mapToDouble(Use::noted).sum();
    }

    double noted(String measure) {
        return uses.stream()
                .filter(use -> use.measure().equals(measure))
                .mapToDouble(Use::noted)
                .sum();
    }

    double squares() {
        return uses.stream().mapToDouble(Use::squares).sum();
    }

    /** Whether it tells anything about how well she judges. */
    boolean tells() {
        return !waste && noted() > 0;
    }
}
