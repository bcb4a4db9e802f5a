package patinary.salestax;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import patinary.web.Choice;

/**
 * A month, a quarter or a year: the time that a return of sales tax is for.
 *
 * @param first its first day
 * @param months how many months it has: 1, 3 or 12
 */
record Period(LocalDate first, int months) {

    static final int YEAR = 12;
    private static final int QUARTER = 3;

    /** The quarter that a day lies in. */
    static Period quarterOf(LocalDate day) {
        Month begins = day.getMonth().firstMonthOfQuarter();
        return new Period(LocalDate.of(day.getYear(), begins, 1), QUARTER);
    }

    /** Reads a year with one of {@link #parts()}; nothing where it is none. */
    static Optional<Period> of(int year, String part) {
        if (year < 1900 || year > 9999) {
            return Optional.empty();
        }
        if (part.equals("year")) {
            return Optional.of(new Period(LocalDate.of(year, 1, 1), YEAR));
        }
        if (part.matches("q[1-4]")) {
            return Optional.of(new Period(LocalDate.of(year, (part.charAt(1) - '1') * QUARTER + 1, 1), QUARTER));
        }
        if (part.matches("m([1-9]|1[0-2])")) {
            return Optional.of(new Period(LocalDate.of(year, Integer.parseInt(part.substring(1)), 1), 1));
        }
        return Optional.empty();
    }

    /** What of a year can be chosen. */
    static List<Choice> parts(Locale locale) {
        List<Choice> parts = new ArrayList<>();
        parts.add(Choice.said("year", "salestax.period.year"));
        parts.add(Choice.said("q1", "salestax.period.q1"));
        parts.add(Choice.said("q2", "salestax.period.q2"));
        parts.add(Choice.said("q3", "salestax.period.q3"));
        parts.add(Choice.said("q4", "salestax.period.q4"));
        for (Month month : Month.values()) {
            parts.add(Choice.named("m" + month.getValue(), month.getDisplayName(TextStyle.FULL_STANDALONE, locale)));
        }
        return parts;
    }

    public int year() {
        return first.getYear();
    }

    public String part() {
        return switch (months) {
            case YEAR -> "year";
            case QUARTER -> "q" + (first.getMonthValue() / QUARTER + 1);
            default -> "m" + first.getMonthValue();
        };
    }

    public LocalDate last() {
        return YearMonth.from(first).plusMonths(months - 1L).atEndOfMonth();
    }

    public Period next() {
        return new Period(first.plusMonths(months), months);
    }

    public Period previous() {
        return new Period(first.minusMonths(months), months);
    }

    boolean holds(LocalDate from, LocalDate to) {
        return !from.isBefore(first) && !to.isAfter(last());
    }

    boolean touches(LocalDate from, LocalDate to) {
        return !from.isAfter(last()) && !to.isBefore(first);
    }
}
