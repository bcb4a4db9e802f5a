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
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import patinary.insight.MoveFacts.Sold;
import patinary.insight.MoveFacts.Spell;

/** Which pieces of some facts stand behind the figures of a group in one period. */
final class MoveReckoning {

    private static final String NO_CHANNEL = "";

    private final MoveFacts facts;
    private final LocalDate first;
    private final LocalDate last;
    private final Map<UUID, List<Spell>> spells;
    private final Map<UUID, List<Sold>> soldEver;
    private final List<Sold> sold;

    MoveReckoning(MoveFacts facts, LocalDate first, LocalDate last) {
        this.facts = facts;
        this.first = first;
        this.last = last;
        spells = facts.spells().stream().collect(Collectors.groupingBy(Spell::piece));
        soldEver = facts.sold().stream().collect(Collectors.groupingBy(Sold::piece));
        sold = facts.sold().stream()
                .filter(s -> !s.day().isBefore(first) && !s.day().isAfter(last))
                .toList();
    }

    /** @param members which pieces, and on which channel, belong to the group */
    Behind behind(BiPredicate<UUID, String> members) {
        List<Behind.Sale> sales = sold.stream()
                .filter(s -> members.test(s.piece(), s.channel()))
                .map(s -> new Behind.Sale(s, s.cameBack() ? Optional.empty() : days(s)))
                .toList();
        Set<UUID> offered = onOffer(members, span -> span.touches(first, last));
        sales.forEach(sale -> offered.add(sale.sold().piece()));
        return new Behind(found(members), offered, onOffer(members, span -> span.covers(last)), sales);
    }

    private List<Behind.Came> found(BiPredicate<UUID, String> members) {
        return facts.found().entrySet().stream()
                .filter(f -> !f.getValue().isBefore(first) && !f.getValue().isAfter(last))
                .filter(f -> members.test(f.getKey(), NO_CHANNEL))
                .map(f -> new Behind.Came(f.getKey(), f.getValue()))
                .toList();
    }

    private Set<UUID> onOffer(BiPredicate<UUID, String> members, Predicate<Span> when) {
        return facts.spells().stream()
                .filter(spell -> when.test(spell.span()))
                .filter(spell -> channels(spell).anyMatch(c -> members.test(spell.piece(), c)))
                .map(Spell::piece)
                .collect(Collectors.toCollection(HashSet::new));
    }

    private Optional<Integer> days(Sold one) {
        List<Spell> own = spells.getOrDefault(one.piece(), List.of());
        LocalDate since = soldEver.getOrDefault(one.piece(), List.of()).stream()
                .filter(s -> s.day().isBefore(one.day()))
                .map(Sold::day)
                .max(Comparator.naturalOrder())
                .orElse(LocalDate.MIN);
        List<Span> pauses = new ArrayList<>();
        own.forEach(spell -> pauses.addAll(facts.pauses().getOrDefault(spell.offer(), List.of())));
        return DaysOnOffer.until(own.stream().map(Spell::span).toList(), pauses, since, one.day());
    }

    private static Stream<String> channels(Spell spell) {
        return spell.channels().isEmpty() ? Stream.of(NO_CHANNEL) : spell.channels().stream();
    }
}
