package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What became of a piece that was offered, as it stands today.
 *
 * @param clockFrom its first day on offer; null where that tells nothing
 * @param net what it left of its sale; null while unsold
 * @param off what fees, postage and packaging took off its sale; says nothing while unsold
 * @param worked whether all its supplies and minutes are in the books
 */
record Outcome(
        UUID piece,
        PayRow.Group group,
        @Nullable LocalDate clockFrom,
        @Nullable LocalDate soldOn,
        @Nullable Amount net,
        Amount off,
        Amount supplies,
        BigDecimal minutes,
        Amount bought,
        boolean worked) {

    /** Those sold last first, then what waits, offered last first. */
    static final Comparator<Outcome> LATEST = ((Comparator<Outcome>) (one, other) -> latest(one.soldOn, other.soldOn))
            .thenComparing((one, other) -> latest(one.clockFrom, other.clockFrom))
            .thenComparing(Outcome::piece);

    /**
     * The days of a piece, each null where there was none.
     *
     * @param taken on which it was taken into the books from before
     * @param letGo on which it went, of a piece that never was on offer
     */
    record Days(
            @Nullable LocalDate offered,
            @Nullable LocalDate sold,
            @Nullable LocalDate taken,
            @Nullable LocalDate letGo) {

        /**
         * The first day on offer: a sale implies an offer, and what was let go before had its time and did not sell. Null of what still waits
         * at the bench, and of what was on offer before the books began: those like it that sold before are not in the books.
         */
        @Nullable
        LocalDate clockFrom() {
            LocalDate from = offered != null && (sold == null || !offered.isAfter(sold)) ? offered : sold;
            if (from == null) {
                return letGo;
            }
            return taken != null && !from.isAfter(taken) ? null : from;
        }
    }

    /** The later day first, no day last. */
    private static int latest(@Nullable LocalDate one, @Nullable LocalDate other) {
        if (one == null || other == null) {
            return Boolean.compare(one == null, other == null);
        }
        return other.compareTo(one);
    }

    /** @param worked whether it is finished and nothing done to it in the books waits for its cost */
    static Outcome of(
            UUID piece,
            PayRow.Group group,
            Days days,
            @Nullable Amount net,
            Amount off,
            Amount supplies,
            BigDecimal minutes,
            Amount bought,
            boolean worked) {
        return new Outcome(
                piece,
                group,
                days.clockFrom(),
                days.sold(),
                net,
                off,
                supplies,
                minutes,
                bought,
                worked && days.taken() == null);
    }

    /** What buyers paid for it without tax, less refunds; null while unsold. */
    public @Nullable Amount paid() {
        return net == null ? null : net.plus(off);
    }

    public long wholeMinutes() {
        return Ratios.wholeMinutes(minutes);
    }
}
