package patinary.insight;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import patinary.insight.MoveFacts.Sold;
import patinary.insight.MoveFacts.Spell;

/**
 * The days on offer and the sales of each month of the year. A piece on offer from one day until another was to be had on the days
 * after the first up to the other, without those of a pause, each once however many offers stood. A set is one thing: of the pieces on
 * one offer, one counts. A sale that came back is none.
 */
final class SeasonDays {

    private static final int MONTHS = 12;

    private SeasonDays() {}

    static Seasons of(MoveFacts facts, LocalDate today) {
        Map<UUID, UUID> counted = new HashMap<>();
        facts.spells().forEach(spell -> counted.merge(spell.offer(), spell.piece(), SeasonDays::smaller));
        Map<UUID, List<Spell>> spells = facts.spells().stream()
                .filter(spell -> !spell.span().from().isAfter(today))
                .collect(Collectors.groupingBy(Spell::piece));
        long[] days = new long[MONTHS];
        spells.values().forEach(own -> add(own, facts, counted, today, days));
        long[] sales = new long[MONTHS];
        for (Sold sold : facts.sold()) {
            if (!sold.cameBack() && !sold.day().isAfter(today) && counts(sold, spells, counted)) {
                sales[sold.day().getMonthValue() - 1]++;
            }
        }
        long watched = facts.spells().stream()
                .map(spell -> spell.span().from())
                .min(Comparator.naturalOrder())
                .map(first -> ChronoUnit.DAYS.between(first, today))
                .orElse(0L);
        return Seasons.of(sales, days, watched);
    }

    private static void add(List<Spell> own, MoveFacts facts, Map<UUID, UUID> counted, LocalDate today, long[] days) {
        Set<LocalDate> on = new HashSet<>();
        for (Spell spell : own) {
            if (spell.piece().equals(counted.get(spell.offer()))) {
                LocalDate until = spell.span().until();
                LocalDate end = until == null || until.isAfter(today) ? today : until;
                LocalDate from = spell.span().from();
                if (from.isBefore(end)) {
                    from.plusDays(1).datesUntil(end.plusDays(1)).forEach(on::add);
                }
            }
        }
        for (Spell spell : own) {
            for (Span pause : facts.pauses().getOrDefault(spell.offer(), List.of())) {
                LocalDate until = pause.until() == null ? today.plusDays(1) : pause.until();
                if (pause.from().isBefore(until)) {
                    pause.from().datesUntil(until).forEach(on::remove);
                }
            }
        }
        on.forEach(day -> days[day.getMonthValue() - 1]++);
    }

    /** Without an offer a sale has no days and says nothing of speed. */
    private static boolean counts(Sold sold, Map<UUID, List<Spell>> spells, Map<UUID, UUID> counted) {
        return spells.getOrDefault(sold.piece(), List.of()).stream()
                .filter(spell -> !spell.span().from().isAfter(sold.day()))
                .max(Comparator.comparing(spell -> spell.span().from()))
                .filter(last -> sold.piece().equals(counted.get(last.offer())))
                .isPresent();
    }

    private static UUID smaller(UUID one, UUID other) {
        return one.compareTo(other) <= 0 ? one : other;
    }
}
