package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import patinary.insight.MoveFacts.Sold;
import patinary.insight.MoveFacts.Spell;
import patinary.money.Amount;

/**
 * What moved in a period, group by group, and the whole shop beside it. The whole is reckoned without looking at groups,
 * so that it can check them. docs/handbook/what-moves.md gives the definitions.
 *
 * @param rows the groups, by their sell-through drawn towards the shop's, then by net sales and name
 * @param whole the whole shop
 */
record MoveTable(List<MoveRow> rows, MoveRow whole) {

    /** Which pieces, and on which channel, belong to a group. */
    private record Members(String name, BiPredicate<UUID, String> has) {}

    /** Groups of pieces: style, kind or supply line. */
    static MoveTable byPiece(MoveFacts facts, LocalDate first, LocalDate last, List<MoveFacts.Group> groups) {
        Map<String, Set<UUID>> pieces = new HashMap<>();
        groups.forEach(group -> pieces.computeIfAbsent(group.name() == null ? "" : group.name(), n -> new HashSet<>())
                .add(group.piece()));
        List<Members> members = pieces.entrySet().stream()
                .map(entry -> new Members(
                        entry.getKey(), (piece, channel) -> entry.getValue().contains(piece)))
                .toList();
        return of(facts, first, last, members);
    }

    /** Groups of channels: where a piece was on offer, and where it was sold. */
    static MoveTable byChannel(MoveFacts facts, LocalDate first, LocalDate last) {
        Set<String> names = new TreeSet<>();
        facts.spells().forEach(spell -> names.addAll(spell.channels()));
        facts.sold().forEach(sold -> names.add(sold.channel()));
        List<Members> members = names.stream()
                .map(name -> new Members(name, (piece, channel) -> name.equals(channel)))
                .toList();
        return of(facts, first, last, members);
    }

    private static MoveTable of(MoveFacts facts, LocalDate first, LocalDate last, List<Members> members) {
        Reckoning reckoning = new Reckoning(facts, first, last);
        List<MoveRow> rows = members.stream()
                .map(reckoning::row)
                .filter(row -> row.found() + row.onOffer() + row.waiting() > 0
                        || !row.net().isZero())
                .toList();
        return new MoveTable(ranked(rows), reckoning.row(new Members("", (piece, channel) -> true)));
    }

    /** What was never on offer stands last. */
    private static List<MoveRow> ranked(List<MoveRow> rows) {
        ShrunkenShare shares =
                ShrunkenShare.of(rows.stream().map(MoveRow::tries).toList());
        return rows.stream()
                .map(row -> row.onOffer() == 0 ? row : row.drawn(shares.share(row.tries())))
                .sorted(Comparator.comparingDouble(MoveTable::rank)
                        .thenComparing(Comparator.comparing(MoveRow::net).reversed())
                        .thenComparing(MoveRow::name))
                .toList();
    }

    private static double rank(MoveRow row) {
        Estimate drawn = row.drawn();
        return drawn == null ? 1 : -drawn.value();
    }

    /** The sums of one period. */
    private static final class Reckoning {

        private static final String NO_CHANNEL = "";

        private final MoveFacts facts;
        private final LocalDate first;
        private final LocalDate last;
        private final Map<UUID, List<Spell>> spells;
        private final Map<UUID, List<Sold>> soldEver;
        private final List<Sold> sold;

        Reckoning(MoveFacts facts, LocalDate first, LocalDate last) {
            this.facts = facts;
            this.first = first;
            this.last = last;
            spells = facts.spells().stream().collect(Collectors.groupingBy(Spell::piece));
            soldEver = facts.sold().stream().collect(Collectors.groupingBy(Sold::piece));
            sold = facts.sold().stream()
                    .filter(s -> !s.day().isBefore(first) && !s.day().isAfter(last))
                    .toList();
        }

        MoveRow row(Members members) {
            List<Sold> own = sold.stream()
                    .filter(s -> members.has().test(s.piece(), s.channel()))
                    .toList();
            Set<UUID> stayed =
                    own.stream().filter(s -> !s.cameBack()).map(Sold::piece).collect(Collectors.toSet());
            Set<UUID> offered = onOffer(members, span -> span.touches(first, last));
            own.forEach(s -> offered.add(s.piece()));
            List<Integer> days = own.stream()
                    .filter(s -> !s.cameBack())
                    .map(this::days)
                    .flatMap(Optional::stream)
                    .toList();
            BigDecimal median = Median.of(days).orElse(null);
            return new MoveRow(
                    members.name(),
                    found(members),
                    offered.size(),
                    stayed.size(),
                    onOffer(members, span -> span.covers(last)).size(),
                    median,
                    days.size(),
                    sum(own.stream().map(Sold::cost)),
                    sum(own.stream().map(Sold::net)),
                    sum(own.stream().map(Sold::profit)),
                    null);
        }

        private int found(Members members) {
            return (int) facts.found().entrySet().stream()
                    .filter(f -> !f.getValue().isBefore(first) && !f.getValue().isAfter(last))
                    .filter(f -> members.has().test(f.getKey(), NO_CHANNEL))
                    .count();
        }

        private Set<UUID> onOffer(Members members, java.util.function.Predicate<Span> when) {
            return facts.spells().stream()
                    .filter(spell -> when.test(spell.span()))
                    .filter(spell -> channels(spell).anyMatch(c -> members.has().test(spell.piece(), c)))
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

        private static Amount sum(Stream<Long> minor) {
            return minor.map(Amount::of).collect(Amount.sum());
        }
    }
}
