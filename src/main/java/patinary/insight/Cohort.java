package patinary.insight;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.money.Percent;
import patinary.survival.Incidence;
import patinary.survival.Limits;
import patinary.survival.Stay;

/**
 * What was first offered in one month, and how much of it sold within {@value #DAYS} days.
 *
 * @param offered pieces, a set as one
 * @param sold of them within so many days, with what was withdrawn counted as unsold (Aalen and Johansen); null while the youngest had not
 *     so long, or of fewer than {@value #FEW}
 * @param low the lower 95 % limit; null where none can be told
 * @param rounds what was offered, each piece
 */
record Cohort(
        YearMonth month,
        int offered,
        boolean young,
        @Nullable Percent sold,
        @Nullable Percent low,
        @Nullable Percent high,
        List<Round> rounds) {

    static final int DAYS = 60;
    static final int FEW = 5;

    /** The latest first. */
    static List<Cohort> of(List<Round> rounds, LocalDate today) {
        TreeMap<YearMonth, List<Round>> months = rounds.stream()
                .collect(Collectors.groupingBy(
                        round -> YearMonth.from(round.from()), TreeMap::new, Collectors.toList()));
        return months.descendingMap().entrySet().stream()
                .map(month -> of(month.getKey(), month.getValue(), today))
                .toList();
    }

    private static Cohort of(YearMonth month, List<Round> rounds, LocalDate today) {
        List<Stay> stays = Speed.stays(rounds);
        boolean young = month.atEndOfMonth().plusDays(DAYS).isAfter(today);
        if (young || stays.size() < FEW) {
            return new Cohort(month, stays.size(), young, null, null, null, rounds);
        }
        Incidence incidence = Incidence.of(stays);
        patinary.survival.Span limits = incidence.soldLimits(DAYS, Limits.LOG_LOG);
        return new Cohort(
                month,
                stays.size(),
                false,
                Ratios.percent(incidence.sold(DAYS)),
                share(limits.low()),
                share(limits.high()),
                rounds);
    }

    private static @Nullable Percent share(double share) {
        return Double.isNaN(share) ? null : Ratios.percent(share);
    }

    /** Its first day, for the page. */
    public LocalDate first() {
        return month.atDay(1);
    }
}
