package patinary.insight;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.money.Amount;

/** Reads what moves: a handful of queries, however many pieces there are. */
@Repository
@Transactional(readOnly = true)
class Moves {

    private static final String FOUND = """
            select piece_id, found_on from piece_state
            where found_on between :first and :last
              and not exists (select 1 from piece_owner po where po.piece_id = piece_state.piece_id)""";

    private static final String SPELLS = "select piece_id, offer_id, from_day, until_day from offer_spell";

    private static final String SOLD =
            "select piece_id, sold_on, channel_id, came_back, net_minor, cost_minor, profit_minor from piece_sold";

    /** Also earlier sales of what sold: an earlier one that came back ends the days before it. */
    private static final String SOLD_IN = SOLD + "\n" + """
            where sold_on between :first and :last
               or sold_on < :first
                  and piece_id in (select sp.piece_id from sale_part sp where sp.sold_on between :first and :last)""";

    /** On offer on any of the days, or before them of what sold on them. */
    private static final String SPELLS_IN = SPELLS + "\n" + """
            where until_day is null or until_day >= :first
               or piece_id in (select sp.piece_id from sale_part sp where sp.sold_on between :first and :last)""";

    private static final String IN_ORDER = " order by sold_on, sale_id, piece_id";

    private enum Kept {
        OFFERS,
        PAUSES,
        CHANNELS,
        CHANNEL_NAMES,
        FIRST_PRICES,
        BANDS,
        FIRST_OFFERED
    }

    private record Facts(LocalDate first, LocalDate last) {}

    private static final Map<String, String> GROUPS = Map.of(
            "style", "piece_of_style",
            "kind", "piece_of_kind",
            "material", "piece_of_material",
            "line", "piece_of_line",
            "finish", "piece_of_finish");

    private static final String FIRST_OFFERED = """
            select op.piece_id, min(d.doc_date) as on_day
            from offer_piece op
            join document d on d.id = op.offer_id
            group by op.piece_id""";

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
        return narrowing.kept(
                readings, new Table(by, first, last, narrowing.chosen()), those -> reckoned(by, first, last, those));
    }

    private MoveTable reckoned(By by, LocalDate first, LocalDate last, Narrowing narrowing) {
        MoveFacts facts = narrowing.of(facts(first, last));
        return by == By.CHANNEL
                ? MoveTable.byChannel(facts.on(channels()), first, last)
                : MoveTable.byPiece(
                        facts,
                        first,
                        last,
                        groups(by).stream()
                                .filter(group -> narrowing.has(group.piece()))
                                .toList());
    }

    private List<MoveFacts.Group> groups(By by) {
        return switch (by) {
            case PRICE -> ofEveryPiece(bandsOfPieces());
            case SEASON -> ofEveryPiece(seasonsOfPieces());
            default -> groups(by.word());
        };
    }

    /** A piece that belongs to none has a group without a name. */
    private List<MoveFacts.Group> ofEveryPiece(Map<UUID, String> names) {
        return groups(By.STYLE.word()).stream()
                .map(one -> new MoveFacts.Group(one.piece(), names.get(one.piece())))
                .toList();
    }

    /** The band of first asked prices that each piece with a price is in. */
    Map<UUID, String> bandsOfPieces() {
        PriceBands bands = bands();
        Map<UUID, String> names = new HashMap<>();
        if (bands != null) {
            firstPrices()
                    .forEach((piece, price) -> names.put(piece, bands.of(price).word()));
        }
        return names;
    }

    /** The time of year of the first offer of each piece that had one. */
    Map<UUID, String> seasonsOfPieces() {
        Map<UUID, String> names = new HashMap<>();
        firstOffered().forEach((piece, day) -> names.put(piece, Quarters.of(day)));
        return names;
    }

    /** The first day of the first offer of each piece that was ever offered. */
    Map<UUID, LocalDate> firstOffered() {
        return readings.ahead(Kept.FIRST_OFFERED, () -> PieceDays.of(jdbc.sql(FIRST_OFFERED)));
    }

    /** What is known of the pieces that came, were on offer or sold on these days; on no channel. */
    private MoveFacts facts(LocalDate first, LocalDate last) {
        return readings.ahead(
                new Facts(first, last),
                () -> new MoveFacts(
                        found(first, last),
                        Map.of(),
                        new OfferFacts(
                                spells(of(SPELLS_IN, first, last)),
                                pauses(),
                                sold(of(SOLD_IN + IN_ORDER, first, last)))));
    }

    /** When pieces were on offer and when they sold. */
    OfferFacts offers() {
        return readings.ahead(
                Kept.OFFERS, () -> new OfferFacts(spells(jdbc.sql(SPELLS)), pauses(), sold(jdbc.sql(SOLD + IN_ORDER))));
    }

    private JdbcClient.StatementSpec of(String query, LocalDate first, LocalDate last) {
        return jdbc.sql(query).param("first", first).param("last", last);
    }

    private Map<UUID, LocalDate> found(LocalDate first, LocalDate last) {
        return PieceDays.of(of(FOUND, first, last));
    }

    private static List<OfferFacts.Spell> spells(JdbcClient.StatementSpec asked) {
        return asked.query((row, number) -> new OfferFacts.Spell(
                        row.getObject(1, UUID.class),
                        row.getObject(2, UUID.class),
                        new Span(row.getObject(3, LocalDate.class), row.getObject(4, LocalDate.class))))
                .list();
    }

    /** The names of each offer's channels. */
    private Map<UUID, List<String>> channels() {
        return readings.ahead(Kept.CHANNELS, this::readChannels);
    }

    private Map<UUID, List<String>> readChannels() {
        Map<UUID, String> names = channelNames();
        Map<UUID, List<String>> channels = new HashMap<>();
        jdbc.sql("select offer_id, channel_id from offer_channel").query(row -> {
            channels.computeIfAbsent(row.getObject(1, UUID.class), offer -> new ArrayList<>(2))
                    .add(names.getOrDefault(row.getObject(2, UUID.class), ""));
        });
        return channels;
    }

    /** What each channel is called. */
    Map<UUID, String> channelNames() {
        return readings.ahead(Kept.CHANNEL_NAMES, () -> Names.of(jdbc, "channel"));
    }

    private Map<UUID, List<Span>> pauses() {
        return readings.ahead(Kept.PAUSES, this::readPauses);
    }

    private Map<UUID, List<Span>> readPauses() {
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

    private List<OfferFacts.Sold> sold(JdbcClient.StatementSpec asked) {
        Map<UUID, String> channels = channelNames();
        return asked.query((row, number) -> new OfferFacts.Sold(
                        row.getObject(1, UUID.class),
                        row.getObject(2, LocalDate.class),
                        channels.getOrDefault(row.getObject(3, UUID.class), ""),
                        row.getBoolean(4),
                        row.getLong(5),
                        row.getLong(6),
                        row.getLong(7)))
                .list();
    }

    /** The names of the groups that each piece is in, of one grouping: a style, kinds, supply lines, and so on. */
    Map<UUID, List<String>> groupsOfPieces(String groupedBy) {
        return readings.ahead(new OfPieces(groupedBy), () -> byPiece(groupedBy));
    }

    /** What was first asked for each piece that was ever offered for a price. */
    Map<UUID, Amount> firstPrices() {
        return readings.ahead(Kept.FIRST_PRICES, () -> {
            Map<UUID, Amount> prices = new HashMap<>();
            jdbc.sql("select piece_id, price_minor from piece_asked_first").query(row -> {
                prices.put(row.getObject(1, UUID.class), Amount.of(row.getLong(2)));
            });
            return prices;
        });
    }

    /** The three bands of first asked prices of the whole shop; null where nothing has a price. */
    @Nullable
    PriceBands bands() {
        return readings.of(
                        Kept.BANDS,
                        () -> Optional.of(firstPrices().values())
                                .filter(asked -> !asked.isEmpty())
                                .map(PriceBands::of))
                .orElse(null);
    }

    private Map<UUID, List<String>> byPiece(String groupedBy) {
        Map<UUID, List<String>> groups = new HashMap<>();
        groups(groupedBy)
                .forEach(one -> groups.computeIfAbsent(one.piece(), piece -> new ArrayList<>(1))
                        .add(one.name()));
        return groups;
    }

    private List<MoveFacts.Group> groups(String groupedBy) {
        return readings.ahead(
                new Groups(groupedBy),
                () -> jdbc.sql("select piece_id, name from " + GROUPS.get(groupedBy))
                        .query((row, number) -> new MoveFacts.Group(row.getObject(1, UUID.class), row.getString(2)))
                        .list());
    }
}
