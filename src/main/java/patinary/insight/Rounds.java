package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.insight.OfferFacts.Sold;
import patinary.insight.OfferFacts.Spell;
import patinary.survival.Exit;
import patinary.survival.Stay;

/**
 * Makes the rounds of all pieces. A round begins with the first offer after an earlier sale that came back, or with the first of
 * all; days off offer and days of a pause stop its clock. A sale that a refund undid ends its round as one whose end is not known.
 * A piece that is off offer today counts as withdrawn with the days it had; offered again, its clock goes on. A piece taken over
 * when the books began, on offer before, is watched from the age it had that day. docs/handbook/days-to-sell.md says why.
 */
final class Rounds {

    private final OfferFacts facts;
    private final Map<UUID, LocalDate> takenOver;
    private final LocalDate today;
    private final Set<UUID> sets = new HashSet<>();

    private Rounds(OfferFacts facts, Map<UUID, LocalDate> takenOver, LocalDate today) {
        this.facts = facts;
        this.takenOver = takenOver;
        this.today = today;
        Map<UUID, UUID> pieces = new HashMap<>();
        for (Spell spell : facts.spells()) {
            UUID other = pieces.putIfAbsent(spell.offer(), spell.piece());
            if (other != null && !other.equals(spell.piece())) {
                sets.add(spell.offer());
            }
        }
    }

    /**
     * The rounds as they stand on a day.
     *
     * @param takenOver the day on which a piece was taken into the books from before
     */
    static List<Round> of(OfferFacts facts, Map<UUID, LocalDate> takenOver, LocalDate today) {
        Rounds rounds = new Rounds(facts, takenOver, today);
        Map<UUID, List<Spell>> spells = facts.spellsByPiece();
        Map<UUID, List<Sold>> sold = facts.soldByPiece();
        List<Round> all = new ArrayList<>(spells.size());
        spells.forEach((piece, own) -> rounds.add(own, sold.getOrDefault(piece, List.of()), all));
        all.sort(Comparator.comparing(Round::from).thenComparing(Round::piece));
        return List.copyOf(all);
    }

    private void add(List<Spell> spells, List<Sold> sales, List<Round> rounds) {
        LocalDate since = LocalDate.MIN;
        boolean gone = false;
        for (Sold sale : sales.stream().sorted(Comparator.comparing(Sold::day)).toList()) {
            boolean sold = !sale.cameBack();
            round(spells, since, sale.day(), sold ? Exit.SOLD : Exit.OPEN, sold ? sale.channel() : "")
                    .ifPresent(rounds::add);
            since = sale.day();
            gone = sold;
        }
        if (!gone) {
            last(spells, since).ifPresent(rounds::add);
        }
    }

    private Optional<Round> last(List<Spell> spells, LocalDate since) {
        List<Spell> own = spells.stream()
                .filter(spell -> !spell.span().from().isBefore(since)
                        && !spell.span().from().isAfter(today))
                .toList();
        if (own.stream().anyMatch(spell -> spell.span().covers(today))) {
            return round(own, since, today, Exit.OPEN, "");
        }
        return own.stream()
                .map(spell -> spell.span().until())
                .filter(java.util.Objects::nonNull)
                .max(Comparator.naturalOrder())
                .flatMap(end -> round(own, since, end, Exit.WITHDRAWN, ""));
    }

    private Optional<Round> round(List<Spell> spells, LocalDate since, LocalDate end, Exit exit, String channel) {
        List<Spell> own = spells.stream()
                .filter(spell -> !spell.span().from().isBefore(since)
                        && !spell.span().from().isAfter(end))
                .sorted(Comparator.comparing((Spell spell) -> spell.span().from()))
                .toList();
        if (own.isEmpty()) {
            return Optional.empty();
        }
        int days = days(own, since, end);
        Spell first = own.get(0);
        int watchedFrom = Math.min(days, watchedFrom(own, since, first.piece()));
        return Optional.of(new Round(
                first.piece(),
                first.offer(),
                set(own.get(own.size() - 1)),
                first.span().from(),
                new Stay(watchedFrom, days, exit),
                channel));
    }

    private int watchedFrom(List<Spell> own, LocalDate since, UUID piece) {
        LocalDate began = takenOver.get(piece);
        return began == null || !own.get(0).span().from().isBefore(began) ? 0 : days(own, since, began);
    }

    private int days(List<Spell> own, LocalDate since, LocalDate end) {
        List<Span> pauses = own.stream()
                .flatMap(spell -> facts.pauses().getOrDefault(spell.offer(), List.of()).stream())
                .toList();
        return DaysOnOffer.until(own.stream().map(Spell::span).toList(), pauses, since, end)
                .orElse(0);
    }

    private @Nullable UUID set(Spell spell) {
        return sets.contains(spell.offer()) ? spell.offer() : null;
    }
}
