package patinary.insight;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import patinary.insight.OfferFacts.Sold;
import patinary.insight.OfferFacts.Spell;

/**
 * The days on offer and the sales of each month of the year. A piece on offer from one day until another was to be had on the days
 * after the first up to the other, without those of a pause, each once however many offers stood. A set is one thing: of the pieces on
 * one offer, one counts. A sale that came back is none.
 */
final class SeasonDays {

    private static final int MONTHS = 12;

    /**
     * What one month of the year is made of.
     *
     * @param days on offer of each piece that was on offer in it
     * @param sales of the month
     */
    record Month(Map<UUID, Integer> days, List<Sold> sales) {

        /** @param sold the day it sold in this month; null where it did not */
        record Line(UUID piece, int days, @Nullable LocalDate sold) {}

        /** Every piece on offer or sold in the month, the sold ones first. Its days stand once, whatever it sold. */
        List<Line> lines() {
            Map<UUID, Integer> left = new HashMap<>(days);
            List<Line> lines = new ArrayList<>();
            for (Sold sale : sales) {
                Integer own = left.remove(sale.piece());
                lines.add(new Line(sale.piece(), own == null ? 0 : own, sale.day()));
            }
            left.entrySet().stream()
                    .sorted(Map.Entry.<UUID, Integer>comparingByValue()
                            .reversed()
                            .thenComparing(Map.Entry.comparingByKey()))
                    .forEach(one -> lines.add(new Line(one.getKey(), one.getValue(), null)));
            return List.copyOf(lines);
        }
    }

    /** One stretch on offer, in days since 1970; {@code until} is the first day after it. */
    private record On(UUID piece, long from, long until) {}

    private final List<On> stretches = new ArrayList<>();
    private final List<Sold> sales = new ArrayList<>();
    private final long[] days = new long[MONTHS];
    private final long watched;

    private SeasonDays(OfferFacts facts, LocalDate today) {
        Map<UUID, UUID> counted = new HashMap<>();
        facts.spells().forEach(spell -> counted.merge(spell.offer(), spell.piece(), SeasonDays::smaller));
        Map<UUID, List<Spell>> spells = facts.spells().stream()
                .filter(spell -> !spell.span().from().isAfter(today))
                .collect(Collectors.groupingBy(Spell::piece));
        spells.forEach((piece, own) ->
                on(own, facts, counted, today).each((from, until) -> stretches.add(new On(piece, from, until))));
        stretches.forEach(on -> inMonths(on, (month, many) -> days[month - 1] += many));
        for (Sold sold : facts.sold()) {
            if (!sold.cameBack() && !sold.day().isAfter(today) && counts(sold, spells, counted)) {
                sales.add(sold);
            }
        }
        watched = facts.spells().stream()
                .map(spell -> spell.span().from())
                .min(Comparator.naturalOrder())
                .map(first -> ChronoUnit.DAYS.between(first, today))
                .orElse(0L);
    }

    static SeasonDays of(OfferFacts facts, LocalDate today) {
        return new SeasonDays(facts, today);
    }

    Seasons seasons() {
        long[] sold = new long[MONTHS];
        sales.forEach(sale -> sold[sale.day().getMonthValue() - 1]++);
        return Seasons.of(sold, days.clone(), watched);
    }

    /** @param number from 1 */
    Month month(int number) {
        Map<UUID, Integer> ofPieces = new HashMap<>();
        stretches.forEach(on -> inMonths(on, (month, many) -> {
            if (month == number) {
                ofPieces.merge(on.piece(), many, Integer::sum);
            }
        }));
        return new Month(
                ofPieces,
                sales.stream()
                        .filter(sale -> sale.day().getMonthValue() == number)
                        .toList());
    }

    /** What takes the days of a month, from 1. */
    private interface Taker {

        void take(int month, int days);
    }

    /** Parts a stretch into the months it lies in. */
    private static void inMonths(On on, Taker taker) {
        for (long day = on.from(); day < on.until(); ) {
            LocalDate start = LocalDate.ofEpochDay(day);
            long end = Math.min(on.until(), day + start.lengthOfMonth() - start.getDayOfMonth() + 1);
            taker.take(start.getMonthValue(), Math.toIntExact(end - day));
            day = end;
        }
    }

    private static Stretches on(List<Spell> own, OfferFacts facts, Map<UUID, UUID> counted, LocalDate today) {
        Stretches on = new Stretches();
        LocalDate after = today.plusDays(1);
        for (Spell spell : own) {
            LocalDate until = spell.span().until();
            if (spell.piece().equals(counted.get(spell.offer()))) {
                on.add(
                        spell.span().from().plusDays(1),
                        until == null || until.isAfter(today) ? after : until.plusDays(1));
            }
            for (Span pause : facts.pauses().getOrDefault(spell.offer(), List.of())) {
                on.remove(pause.from(), pause.until() == null ? after : pause.until());
            }
        }
        return on;
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
