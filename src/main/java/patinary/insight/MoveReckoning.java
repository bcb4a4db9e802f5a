package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import patinary.insight.OfferFacts.Sold;
import patinary.insight.OfferFacts.Spell;

/** Which pieces of some facts stand behind the figures of each group in one period. */
final class MoveReckoning {

    /** The groups that a piece on a channel belongs to; the channel is empty where none is known. */
    interface Groups {
        Collection<String> of(UUID piece, String channel);
    }

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

    /** What stands behind the figures of each group that something belongs to. Everything is looked at once, however many groups there are. */
    Map<String, Behind> behindEach(Groups groups) {
        Map<String, Behind> each = new HashMap<>();
        for (Behind.Came one : found) {
            for (String group : groups.of(one.piece(), NO_CHANNEL)) {
                of(group, each).found().add(one);
            }
        }
        for (Spell spell : offered) {
            groups(spell, groups).forEach(group -> of(group, each).offered().add(spell.piece()));
        }
        for (Spell spell : waiting) {
            groups(spell, groups).forEach(group -> of(group, each).waiting().add(spell.piece()));
        }
        for (Behind.Sale sale : sales) {
            Sold sold = sale.sold();
            for (String group : groups.of(sold.piece(), sold.channel())) {
                Behind behind = of(group, each);
                behind.offered().add(sold.piece());
                behind.sales().add(sale);
            }
        }
        return each;
    }

    /** What stands behind the figures of the whole shop. */
    Behind behindAll() {
        return of("", behindEach((piece, channel) -> List.of("")));
    }

    private static Behind of(String group, Map<String, Behind> each) {
        return each.computeIfAbsent(group, name -> Behind.empty());
    }

    private Stream<String> groups(Spell spell, Groups groups) {
        List<String> channels = facts.channels(spell.offer());
        return channels.isEmpty()
                ? groups.of(spell.piece(), NO_CHANNEL).stream()
                : channels.stream().flatMap(channel -> groups.of(spell.piece(), channel).stream());
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
