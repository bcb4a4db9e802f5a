package patinary.insight;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Reads what moves: a handful of queries, however many pieces there are. */
@Repository
@Transactional(readOnly = true)
class Moves {

    private record FoundRow(UUID pieceId, LocalDate foundOn) {}

    private record SpellRow(
            UUID pieceId,
            UUID offerId,
            LocalDate fromDay,
            @Nullable LocalDate untilDay) {}

    private record PauseRow(
            UUID offerId, LocalDate pausedFrom, @Nullable LocalDate pausedTo) {}

    private record ChannelRow(UUID offerId, String name) {}

    private record SoldRow(
            UUID pieceId,
            LocalDate soldOn,
            String channel,
            boolean cameBack,
            long netMinor,
            long costMinor,
            long profitMinor) {}

    private final JdbcClient jdbc;

    Moves(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    MoveTable table(By by, LocalDate first, LocalDate last, Narrowing narrowing) {
        MoveFacts facts = narrowing.of(facts());
        return by == By.CHANNEL
                ? MoveTable.byChannel(facts, first, last)
                : MoveTable.byPiece(
                        facts,
                        first,
                        last,
                        groups(by).stream()
                                .filter(group -> narrowing.has(group.piece()))
                                .toList());
    }

    /** Everything known of the pieces, read anew. */
    MoveFacts facts() {
        Map<UUID, LocalDate> found = jdbc
                .sql("select piece_id, found_on from piece_state where found_on is not null "
                        + "and not exists (select 1 from piece_owner po where po.piece_id = piece_state.piece_id)")
                .query(FoundRow.class)
                .stream()
                .collect(Collectors.toMap(FoundRow::pieceId, FoundRow::foundOn));
        return new MoveFacts(found, spells(), pauses(), sold());
    }

    private List<MoveFacts.Spell> spells() {
        Map<UUID, List<String>> channels = jdbc
                .sql("select oc.offer_id, c.name from offer_channel oc join channel c on c.id = oc.channel_id")
                .query(ChannelRow.class)
                .stream()
                .collect(Collectors.groupingBy(
                        ChannelRow::offerId, Collectors.mapping(ChannelRow::name, Collectors.toList())));
        return jdbc
                .sql("select piece_id, offer_id, from_day, until_day from offer_spell")
                .query(SpellRow.class)
                .stream()
                .map(row -> new MoveFacts.Spell(
                        row.pieceId(),
                        row.offerId(),
                        new Span(row.fromDay(), row.untilDay()),
                        channels.getOrDefault(row.offerId(), List.of())))
                .toList();
    }

    private Map<UUID, List<Span>> pauses() {
        return jdbc.sql("select offer_id, paused_from, paused_to from offer_pause").query(PauseRow.class).stream()
                .collect(Collectors.groupingBy(
                        PauseRow::offerId, Collectors.mapping(Moves::pause, Collectors.toList())));
    }

    /** Both days of a pause count. */
    private static Span pause(PauseRow row) {
        LocalDate to = row.pausedTo();
        return new Span(row.pausedFrom(), to == null ? null : to.plusDays(1));
    }

    private List<MoveFacts.Sold> sold() {
        return jdbc
                .sql(
                        "select piece_id, sold_on, channel, came_back, net_minor, cost_minor, profit_minor from piece_sold "
                                + "order by sold_on, sale_id, piece_id")
                .query(SoldRow.class)
                .stream()
                .map(row -> new MoveFacts.Sold(
                        row.pieceId(),
                        row.soldOn(),
                        row.channel(),
                        row.cameBack(),
                        row.netMinor(),
                        row.costMinor(),
                        row.profitMinor()))
                .toList();
    }

    private List<MoveFacts.Group> groups(By by) {
        return jdbc.sql("select piece_id, name from piece_group where grouped_by = ?")
                .param(by.word())
                .query((row, number) -> new MoveFacts.Group(row.getObject(1, UUID.class), row.getString(2)))
                .list();
    }
}
