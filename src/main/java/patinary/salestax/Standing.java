package patinary.salestax;

import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * How a place and period stand: what is still to be done.
 *
 * @param filedOn the day on which the return was sent in, or null
 */
record Standing(TaxLine line, Pay pay, @Nullable LocalDate filedOn) {

    /** Whether it is paid. */
    enum Pay {
        /** The period is not over. */
        RUNNING,
        /** No tax is owed for it. */
        NOTHING_DUE,
        OPEN,
        IN_PART,
        PAID,
        /** More was paid than is owed. */
        TOO_MUCH;

        /** The end of its message key. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        public boolean isGood() {
            return this == PAID || this == NOTHING_DUE;
        }

        public boolean isOpen() {
            return this == OPEN || this == IN_PART || this == TOO_MUCH;
        }
    }

    static Standing of(TaxLine line, Period period, LocalDate today, @Nullable LocalDate filedOn) {
        return new Standing(line, pay(line, period, today), filedOn);
    }

    private static Pay pay(TaxLine line, Period period, LocalDate today) {
        if (line.open().isZero()) {
            return line.settled().isZero() ? (today.isAfter(period.last()) ? Pay.NOTHING_DUE : Pay.RUNNING) : Pay.PAID;
        }
        if (line.open().isNegative()) {
            return Pay.TOO_MUCH;
        }
        if (!line.settled().isZero()) {
            return Pay.IN_PART;
        }
        return today.isAfter(period.last()) ? Pay.OPEN : Pay.RUNNING;
    }

    /** Whether the place and period can be marked as filed. */
    public boolean canBeFiled() {
        return line.hasPlace() && filedOn == null && pay != Pay.RUNNING;
    }
}
