package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;

/** Reads what moves: a handful of queries, however many pieces there are. */
@Repository
@Transactional(readOnly = true)
class Moves {

    private static final String FOUND = """
            select piece_id, found_on from piece_state
            where found_on is not null
              and not exists (select 1 from piece_owner po where po.piece_id = piece_state.piece_id)""";

    private enum Kept {
        FACTS,
        OFFERS
    }

    private record Groups(String by) {}

    private record OfPieces(String by) {}

    private record Table(By by, LocalDate first, LocalDate last, List<Only> chosen) {}

    private final JdbcClient jdbc;
    private final Readings readings;

    Moves(JdbcClient jdbc, Readings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    MoveTable table(By by, LocalDate first, LocalDate last, Narrowing narrowing) {
        return readings.of(new Table(by, first, last, narrowing.chosen()), () -> reckoned(by, first, last, narrowing));
    }

    private MoveTable reckoned(By by, LocalDate first, LocalDate last, Narrowing narrowing) {
        MoveFacts facts = narrowing.of(facts());
        return by == By.CHANNEL
                ? MoveTable.byChannel(facts, first, last)
                : MoveTable.byPiece(
                        facts,
                        first,
                        last,
                        groups(by.word()).stream()
                                .filter(group -> narrowing.has(group.piece()))
                                .toList());
    }

    /** Everything known of the pieces. */
    MoveFacts facts() {
        return readings.of(Kept.FACTS, () -> new MoveFacts(found(), channels(), offers()));
    }

    /** When pieces were on offer and when they sold. */
    OfferFacts offers() {
        return readings.of(Kept.OFFERS, () -> new OfferFacts(spells(), pauses(), sold()));
    }

    private Map<UUID, LocalDate> found() {
        Map<UUID, LocalDate> found = new HashMap<>();
        jdbc.sql(FOUND).query(row -> {
            found.put(row.getObject(1, UUID.class), row.getObject(2, LocalDate.class));
        });
        return found;
    }

    private List<OfferFacts.Spell> spells() {
        return jdbc.sql("select piece_id, offer_id, from_day, until_day from offer_spell")
                .query((row, number) -> new OfferFacts.Spell(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        new Span(row.getObject(3, LocalDate.class), row.getObject(4, LocalDate.class))))
                .list();
    }

    private Map<UUID, List<String>> channels() {
        Map<UUID, String> names = new HashMap<>();
        jdbc.sql("select id, name from channel").query(row -> {
            names.put(row.getObject(1, UUID.class), row.getString(2));
        });
        Map<UUID, List<String>> channels = new HashMap<>();
        jdbc.sql("select offer_id, channel_id from offer_channel").query(row -> {
            channels.computeIfAbsent(row.getObject(1, UUID.class), offer -> new ArrayList<>(2))
                    .add(names.getOrDefault(row.getObject(2, UUID.class), ""));
        });
        return channels;
    }

    private Map<UUID, List<Span>> pauses() {
        Map<UUID, List<Span>> pauses = new HashMap<>();
        jdbc.sql("select offer_id, paused_from, paused_to from offer_pause").query(row -> {
            pauses.computeIfAbsent(row.getObject(1, UUID.class), offer -> new ArrayList<>())
                    .add(pause(row.getObject(2, LocalDate.class), row.getObject(3, LocalDate.class)));
        });
        return pauses;
    }

    /** Both days of a pause count. */
    private static Span pause(LocalDate from, @Nullable LocalDate to) {
        return new Span(from, to == null ? null : to.plusDays(1));
    }

    private List<OfferFacts.Sold> sold() {
        return jdbc.sql(
                        "select piece_id, sold_on, channel, came_back, net_minor, cost_minor, profit_minor from piece_sold "
                                + "order by sold_on, sale_id, piece_id")
                .query((row, number) -> new OfferFacts.Sold(
                        row.getObject(1, UUID.class),
                        row.getObject(2, LocalDate.class),
                        row.getString(3),
                        row.getBoolean(4),
                        row.getLong(5),
                        row.getLong(6),
                        row.getLong(7)))
                .list();
    }

    /** The names of the groups that each piece is in, of one grouping: a style, kinds, supply lines, and so on. */
    Map<UUID, List<String>> groupsOfPieces(String groupedBy) {
        return readings.of(new OfPieces(groupedBy), () -> byPiece(groupedBy));
    }

    private Map<UUID, List<String>> byPiece(String groupedBy) {
        Map<UUID, List<String>> groups = new HashMap<>();
        groups(groupedBy)
                .forEach(one -> groups.computeIfAbsent(one.piece(), piece -> new ArrayList<>(1))
                        .add(one.name()));
        return groups;
    }

    private List<MoveFacts.Group> groups(String groupedBy) {
        return readings.of(
                new Groups(groupedBy),
                () -> jdbc.sql("select piece_id, name from piece_group where grouped_by = ?")
                        .param(groupedBy)
                        .query((row, number) -> new MoveFacts.Group(row.getObject(1, UUID.class), row.getString(2)))
                        .list());
    }
}
