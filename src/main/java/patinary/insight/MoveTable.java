package patinary.insight;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * What moved in a period, group by group, and the whole shop beside it. The whole is reckoned without looking at groups,
 * so that it can check them. docs/handbook/what-moves.md gives the definitions.
 *
 * @param rows the groups, by their sell-through drawn towards the shop's, then by net sales and name
 * @param whole the whole shop
 */
record MoveTable(List<MoveRow> rows, MoveRow whole) {

    /** Groups of pieces: style, kind or supply line. */
    static MoveTable byPiece(MoveFacts facts, LocalDate first, LocalDate last, List<MoveFacts.Group> groups) {
        Map<String, Set<String>> alone = new HashMap<>();
        Map<UUID, Set<String>> names = new HashMap<>();
        for (MoveFacts.Group group : groups) {
            names.merge(group.piece(), alone.computeIfAbsent(group.named(), Set::of), MoveTable::both);
        }
        return of(facts, first, last, (piece, channel) -> names.getOrDefault(piece, Set.of()));
    }

    /** Most pieces are in one group, and sets of one are shared. */
    private static Set<String> both(Set<String> some, Set<String> more) {
        Set<String> both = new HashSet<>(some);
        both.addAll(more);
        return both;
    }

    /** Groups of channels: where a piece was on offer, and where it was sold. */
    static MoveTable byChannel(MoveFacts facts, LocalDate first, LocalDate last) {
        Map<String, Set<String>> names = new HashMap<>();
        facts.offers()
                .spells()
                .forEach(spell -> facts.channels(spell.offer()).forEach(name -> names.computeIfAbsent(name, Set::of)));
        facts.offers().sold().forEach(sold -> names.computeIfAbsent(sold.channel(), Set::of));
        return of(facts, first, last, (piece, channel) -> names.getOrDefault(channel, Set.of()));
    }

    private static MoveTable of(MoveFacts facts, LocalDate first, LocalDate last, MoveReckoning.Groups groups) {
        MoveReckoning reckoning = new MoveReckoning(facts, first, last);
        List<MoveRow> rows = reckoning.behindEach(groups).entrySet().stream()
                .map(group -> MoveRow.of(group.getKey(), group.getValue()))
                .filter(row -> row.found() + row.onOffer() + row.waiting() > 0
                        || !row.net().isZero())
                .toList();
        return new MoveTable(ranked(rows), MoveRow.of("", reckoning.behindAll()));
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
