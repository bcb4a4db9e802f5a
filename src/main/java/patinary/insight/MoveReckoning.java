package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiPredicate;
import patinary.insight.OfferFacts.Sold;
import patinary.insight.OfferFacts.Spell;

/** Which pieces of some facts stand behind the figures of a group in one period. */
final class MoveReckoning {

    private static final String NO_CHANNEL = "";

    private final MoveFacts facts;
    private final Map<UUID, List<Spell>> spells;
    private final Map<UUID, List<Sold>> soldEver;
    private final List<Behind.Came> found;
    private final List<Spell> offered;
    private final List<Spell> waiting;
    private final List<Behind.Sale> sales;

    /** What lies in the period is looked for once, and not again for each group. */
    MoveReckoning(MoveFacts facts, LocalDate first, LocalDate last) {
        this.facts = facts;
        spells = facts.offers().spellsByPiece();
        soldEver = facts.offers().soldByPiece();
        found = facts.found().entrySet().stream()
                .filter(f -> !f.getValue().isBefore(first) && !f.getValue().isAfter(last))
                .map(f -> new Behind.Came(f.getKey(), f.getValue()))
                .toList();
        offered = facts.offers().spells().stream()
                .filter(spell -> spell.span().touches(first, last))
                .toList();
        waiting = facts.offers().spells().stream()
                .filter(spell -> spell.span().covers(last))
                .toList();
        sales = facts.offers().sold().stream()
                .filter(s -> !s.day().isBefore(first) && !s.day().isAfter(last))
                .map(s -> new Behind.Sale(s, s.cameBack() ? Optional.empty() : days(s)))
                .toList();
    }

    /** @param members which pieces, and on which channel, belong to the group */
    Behind behind(BiPredicate<UUID, String> members) {
        List<Behind.Sale> own = sales.stream()
                .filter(sale -> members.test(sale.sold().piece(), sale.sold().channel()))
                .toList();
        Set<UUID> everOffered = pieces(offered, members);
        own.forEach(sale -> everOffered.add(sale.sold().piece()));
        List<Behind.Came> came = found.stream()
                .filter(one -> members.test(one.piece(), NO_CHANNEL))
                .toList();
        return new Behind(came, everOffered, pieces(waiting, members), own);
    }

    private Set<UUID> pieces(List<Spell> spells, BiPredicate<UUID, String> members) {
        Set<UUID> pieces = new HashSet<>();
        for (Spell spell : spells) {
            if (onAny(spell, members)) {
                pieces.add(spell.piece());
            }
        }
        return pieces;
    }

    private boolean onAny(Spell spell, BiPredicate<UUID, String> members) {
        List<String> channels = facts.channels(spell.offer());
        return channels.isEmpty()
                ? members.test(spell.piece(), NO_CHANNEL)
                : channels.stream().anyMatch(channel -> members.test(spell.piece(), channel));
    }

    private Optional<Integer> days(Sold one) {
        List<Spell> own = spells.getOrDefault(one.piece(), List.of());
        LocalDate since = soldEver.getOrDefault(one.piece(), List.of()).stream()
                .filter(s -> s.day().isBefore(one.day()))
                .map(Sold::day)
                .max(Comparator.naturalOrder())
                .orElse(LocalDate.MIN);
        List<Span> pauses = new ArrayList<>();
        own.forEach(spell -> pauses.addAll(facts.offers().pauses().getOrDefault(spell.offer(), List.of())));
        return DaysOnOffer.until(own.stream().map(Spell::span).toList(), pauses, since, one.day());
    }
}
