package patinary.insight;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.BiPredicate;

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
        facts.offers().spells().forEach(spell -> names.addAll(facts.channels(spell.offer())));
        facts.offers().sold().forEach(sold -> names.add(sold.channel()));
        List<Members> members = names.stream()
                .map(name -> new Members(name, (piece, channel) -> name.equals(channel)))
                .toList();
        return of(facts, first, last, members);
    }

    private static MoveTable of(MoveFacts facts, LocalDate first, LocalDate last, List<Members> members) {
        MoveReckoning reckoning = new MoveReckoning(facts, first, last);
        List<MoveRow> rows = members.stream()
                .map(one -> MoveRow.of(one.name(), reckoning.behind(one.has())))
                .filter(row -> row.found() + row.onOffer() + row.waiting() > 0
                        || !row.net().isZero())
                .toList();
        return new MoveTable(ranked(rows), MoveRow.of("", reckoning.behind((piece, channel) -> true)));
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
}
