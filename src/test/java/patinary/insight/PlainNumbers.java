package patinary.insight;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import patinary.insight.MoneyFacts.PieceSale;
import patinary.insight.OfferFacts.Sold;
import patinary.insight.OfferFacts.Spell;
import patinary.money.Amount;
import patinary.shop.Aims;

/**
 * The numbers of each page about what moves, for the whole shop by style, in the fastest way we know: queries written apart from the
 * program's own and from its views, which read what these numbers need and nothing else, and then the same pure sums. {@code PlainNumbersIT}
 * shows that they are the numbers of the page; {@code MeasurePages} sets the page's time beside theirs.
 */
public final class PlainNumbers {

    private static final String SPELL = """
            select op.piece_id, op.offer_id, os.started_on, os.until_day, p.style_id
            from offer_state os
            join offer_piece op on op.offer_id = os.offer_id
            join piece p on p.id = op.piece_id
            """;

    private static final String PARTS = """
            select sp.sale_id, sp.piece_id, sp.sold_on, sp.came_back, sp.price_minor, sp.shipping_minor, sp.refund_minor, sp.fee_minor,
                   sp.postage_minor, sp.packaging_minor, sp.cost_minor, f.supplies_minor, f.landed_minor, f.minutes, p.style_id, c.name
            from sale_part sp
            join piece_figures f on f.piece_id = sp.piece_id
            join piece p on p.id = sp.piece_id
            join channel c on c.id = sp.channel_id
            where sp.sold_on between :first and :last and not sp.undelivered
            order by sp.sold_on, sp.sale_id, sp.piece_id""";

    private static final String STOCK = """
            select f.piece_id, f.found_on, s.doc_date, s.amount_minor, p.style_id
            from piece_figures f
            join piece p on p.id = f.piece_id
            join piece_stock s on s.piece_id = f.piece_id
            where (f.in_stock_minor <> 0 or f.stocked_until >= :first) and s.doc_date <= :last
            order by f.piece_id, s.doc_date""";

    private static final String NEEDS = """
            select d.finish_id, f.name, d.kind_id, d.style_id, d.pieces, fs.supply_id, su.name,
                   case when count(case when fs.per_cm2 is not null and k.area_cm2 is null then 1 end) = 0
                        then sum(case when fs.per_cm2 is null then fs.quantity else fs.quantity * k.area_cm2 / fs.per_cm2 end) end,
                   coalesce(max(st.quantity), 0)
            from (select be.finish_id, p.kind_id, p.style_id, count(distinct bp.piece_id) as pieces
                  from bench_entry be
                  join bench_piece bp on bp.bench_entry_id = be.id
                  join piece p on p.id = bp.piece_id
                  where be.finish_id is not null
                  group by be.finish_id, p.kind_id, p.style_id) d
            join finish f on f.id = d.finish_id and not f.removed
            join finish_supply fs on fs.finish_id = d.finish_id
            join supply su on su.id = fs.supply_id
            left join object_kind k on k.id = d.kind_id
            left join (select supply_id, sum(quantity) as quantity from supply_stock where place = 'BENCH' group by supply_id) st
                on st.supply_id = fs.supply_id
            group by d.finish_id, f.name, d.kind_id, d.style_id, d.pieces, fs.supply_id, su.name""";

    /** What the pages ask of the shop beside the database. */
    public record Shop(LocalDate today, Aims aims, Amount rate) {}

    /** What to make next, and for how many there are supplies. */
    record Next(List<NextRow> rows, Map<PayRow.Group, List<Readiness>> ready) {}

    /** What the months say. */
    record Months(Seasons seasons, List<Cohort> cohorts) {}

    private final JdbcClient jdbc;
    private final Shop shop;
    private final Period year;
    private int asked;

    public PlainNumbers(JdbcClient jdbc, Shop shop) {
        this.jdbc = jdbc;
        this.shop = shop;
        this.year = Period.asked("", "", shop.today());
    }

    /** The numbers of a page; null of one that is not about what moves. */
    public @Nullable Object of(String page) {
        return switch (page) {
            case "moves" -> moves();
            case "moves/money" -> money();
            case "moves/next" -> next();
            case "moves/seasons" -> seasons();
            case "moves/hours" -> hours();
            case "moves/days" -> days();
            case "moves/days?by=channel" -> where();
            case "moves/what-to-pay" -> whatToPay();
            default -> null;
        };
    }

    private MoveTable moves() {
        Groups groups = new Groups();
        Map<UUID, LocalDate> found = new HashMap<>();
        rows(
                "select ps.piece_id, ps.found_on, p.style_id from piece_state ps join piece p on p.id = ps.piece_id "
                        + "where ps.found_on between :first and :last",
                row -> {
                    UUID piece = id(row, 1);
                    if (groups.put(piece, id(row, 3))) {
                        found.put(piece, day(row, 2));
                    }
                });
        List<Sold> sold = new ArrayList<>();
        Set<UUID> pieces = new HashSet<>();
        rows(PARTS, row -> {
            UUID piece = id(row, 2);
            if (groups.put(piece, id(row, 15))) {
                SaleParts parts = parts(row);
                sold.add(new Sold(
                        piece,
                        day(row, 3),
                        row.getString(16),
                        row.getBoolean(4),
                        parts.net().minor(),
                        parts.cost().minor(),
                        parts.profit().minor()));
                pieces.add(piece);
            }
        });
        rows(
                "select piece_id, sold_on from sale_part where piece_id in (select piece_id from sale_part where sold_on between :first and :last) "
                        + "and sold_on < :first and not undelivered",
                row -> {
                    if (pieces.contains(id(row, 1))) {
                        sold.add(new Sold(id(row, 1), day(row, 2), "", true, 0, 0, 0));
                    }
                });
        List<Spell> spells = new ArrayList<>();
        rows(SPELL + "where os.until_day is null or os.until_day >= :first", row -> spell(row, groups, spells));
        rows(
                SPELL
                        + "where os.until_day < :first and exists (select 1 from sale_part sp where sp.piece_id = op.piece_id "
                        + "and sp.sold_on between :first and :last)",
                row -> spell(row, groups, spells));
        MoveFacts facts = new MoveFacts(found, Map.of(), new OfferFacts(spells, pauses(), sold));
        return MoveTable.byPiece(facts, year.first(), year.last(), groups.rows());
    }

    private MoneyReport.Answer money() {
        Groups groups = new Groups();
        Map<UUID, BigDecimal> minutes = new HashMap<>();
        List<PieceSale> sales = sales(groups, minutes);
        List<StockOfPiece> stock = new ArrayList<>();
        Lot lot = new Lot(stock);
        rows(STOCK, row -> {
            UUID piece = id(row, 1);
            if (groups.put(piece, id(row, 5))) {
                lot.add(piece, row.getObject(2, LocalDate.class), new StockOfPiece.Change(day(row, 3), row.getLong(4)));
            }
        });
        lot.end();
        int days = Math.toIntExact(ChronoUnit.DAYS.between(year.first(), year.last()) + 1);
        MoneyTable.Grouping grouping = MoneyTable.Grouping.ofPieces(groups::of);
        return new MoneyReport.Answer(MoneyTable.of(new MoneyFacts(sales, stock, minutes), grouping, days), null, null);
    }

    /** Gathers the changes of one piece after the other, as they come in order. */
    private final class Lot {

        private final List<StockOfPiece> stock;
        private @Nullable UUID piece;
        private LocalDate found = year.last();
        private final List<StockOfPiece.Change> changes = new ArrayList<>();

        private Lot(List<StockOfPiece> stock) {
            this.stock = stock;
        }

        private void add(UUID next, @Nullable LocalDate day, StockOfPiece.Change change) {
            if (!next.equals(piece)) {
                end();
                piece = next;
                found = day == null ? year.last() : day;
            }
            changes.add(change);
        }

        private void end() {
            if (piece != null) {
                StockOfPiece one = StockOfPiece.of(piece, found, changes, year.first(), year.last());
                if (one.unitDays().signum() != 0 || !one.closing().isZero()) {
                    stock.add(one);
                }
                changes.clear();
            }
        }
    }

    private HourTable hours() {
        Period months = new Period(
                year.first().withDayOfMonth(1), YearMonth.from(year.last()).atEndOfMonth());
        Map<YearMonth, Amount> profits = new HashMap<>();
        rows(
                "select extract(year from doc_date), extract(month from doc_date), sum(profit_minor) from document_profit "
                        + "where doc_date between :first and :last group by extract(year from doc_date), extract(month from doc_date)",
                months,
                row -> profits.put(month(row), Amount.of(row.getLong(3))));
        Map<YearMonth, BigDecimal> worked = new HashMap<>();
        rows(
                "select extract(year from d.doc_date), extract(month from d.doc_date), sum(be.minutes) from document d "
                        + "join bench_entry be on be.id = d.id where d.doc_date between :first and :last "
                        + "group by extract(year from d.doc_date), extract(month from d.doc_date)",
                months,
                row -> {
                    // Of entries without minutes there is nothing to add.
                    if (row.getBigDecimal(3) != null) {
                        worked.put(month(row), row.getBigDecimal(3));
                    }
                });
        Groups groups = new Groups();
        Map<UUID, BigDecimal> minutes = new HashMap<>();
        List<PieceSale> sales = new ArrayList<>();
        rows(PARTS, months, row -> sale(row, groups, minutes, sales));
        return HourTable.of(
                new HourTable.Facts(profits, worked, new MoneyFacts(sales, List.of(), minutes)),
                months,
                shop.aims(),
                shop.rate());
    }

    private Speeds.Answer days() {
        Groups groups = new Groups();
        List<Round> rounds = Rounds.of(offers(groups), takenOver(), shop.today());
        return new Speeds.Answer(SpeedTable.of(rounds, round -> groups.of(round.piece())), null);
    }

    private SoldWhere where() {
        Groups groups = new Groups();
        Map<UUID, String> channels = names("channel");
        return SoldWhere.of(
                Rounds.of(offers(groups, sale -> channels.getOrDefault(sale, "")), takenOver(), shop.today()),
                channels.values());
    }

    private Months seasons() {
        OfferFacts offers = offers(new Groups());
        return new Months(
                SeasonDays.of(offers, shop.today()).seasons(),
                Cohort.of(Rounds.of(offers, takenOver(), shop.today()), shop.today()));
    }

    private Next next() {
        Map<PayRow.Group, Pool> cells = Pools.of(outcomes(), shop.aims().horizonDays(), shop.today());
        List<NextRow> rows = MakeNext.rows(cells, shop.aims(), MakeNext.Order.HOUR);
        List<Readiness.Need> needs = new ArrayList<>();
        rows(
                NEEDS,
                row -> needs.add(new Readiness.Need(
                        id(row, 1),
                        row.getString(2),
                        row.getObject(3, UUID.class),
                        row.getObject(4, UUID.class),
                        row.getLong(5),
                        id(row, 6),
                        row.getString(7),
                        row.getBigDecimal(8),
                        row.getBigDecimal(9))));
        return new Next(
                rows, Readiness.of(needs, rows.stream().map(NextRow::group).toList(), Together.BOTH));
    }

    private Outcomes.Answer whatToPay() {
        List<Outcome> pieces = outcomes();
        Map<PayRow.Group, Pool> cells = Pools.of(pieces, shop.aims().horizonDays(), shop.today());
        return new Outcomes.Answer(
                cells.isEmpty() ? List.of() : WhatToPay.rows(cells, shop.aims(), shop.rate()),
                PayTrial.of(pieces, shop.aims(), shop.rate(), shop.today()).orElse(null));
    }

    private List<Outcome> outcomes() {
        Map<UUID, LocalDate> letGo =
                lastDays("select lg.piece_id, d.doc_date from letting_go lg join document d on d.id = lg.id");
        Map<UUID, LocalDate> takenOver = lastDays(
                "select op.piece_id, d.doc_date from opening_piece op join document d on d.id = op.opening_id");
        Map<UUID, String> kinds = names("object_kind");
        Map<UUID, String> styles = names("style");
        Set<UUID> others = others();
        List<Outcome> outcomes = new ArrayList<>();
        rows(
                "select f.piece_id, p.kind_id, p.style_id, f.offered_on, f.sold_on, "
                        + "f.sales_minor + f.shipping_minor - f.refunds_minor - f.fees_minor - f.postage_minor - f.packaging_minor, "
                        + "f.fees_minor + f.postage_minor + f.packaging_minor, "
                        + "f.supplies_minor, f.minutes, f.purchase_minor, f.state, f.regrouped_minor, f.uncosted "
                        + "from piece_figures f join piece p on p.id = f.piece_id",
                row -> {
                    UUID piece = id(row, 1);
                    String state = row.getString(11);
                    if (others.contains(piece) || state.equals("GONE") && !letGo.containsKey(piece)) {
                        return;
                    }
                    UUID kind = row.getObject(2, UUID.class);
                    UUID style = row.getObject(3, UUID.class);
                    LocalDate offered = row.getObject(4, LocalDate.class);
                    LocalDate sold = row.getObject(5, LocalDate.class);
                    LocalDate from = offered != null && (sold == null || !offered.isAfter(sold)) ? offered : sold;
                    LocalDate taken = takenOver.get(piece);
                    outcomes.add(new Outcome(
                            piece,
                            new PayRow.Group(kind, kinds.getOrDefault(kind, ""), style, styles.getOrDefault(style, "")),
                            taken != null && from != null && !from.isAfter(taken)
                                    ? null
                                    : from == null ? letGo.get(piece) : from,
                            sold,
                            sold == null ? null : Amount.of(row.getLong(6)),
                            Amount.of(row.getLong(7)),
                            Amount.of(row.getLong(8)),
                            row.getBigDecimal(9),
                            Amount.of(row.getLong(10)),
                            Set.of("READY", "OFFERED", "SOLD").contains(state)
                                    && taken == null
                                    && row.getLong(12) == 0
                                    && !row.getBoolean(13)));
                });
        return outcomes;
    }

    private OfferFacts offers(Groups groups) {
        return offers(groups, channel -> "");
    }

    private OfferFacts offers(Groups groups, Function<@Nullable UUID, String> channel) {
        List<Spell> spells = new ArrayList<>();
        rows(SPELL, row -> spell(row, groups, spells));
        List<Sold> sold = new ArrayList<>();
        rows(
                "select piece_id, sold_on, came_back, channel_id from sale_part where piece_id is not null and not undelivered order by sold_on",
                row -> {
                    UUID piece = id(row, 1);
                    if (!groups.others.contains(piece)) {
                        sold.add(new Sold(
                                piece,
                                day(row, 2),
                                channel.apply(row.getObject(4, UUID.class)),
                                row.getBoolean(3),
                                0,
                                0,
                                0));
                    }
                });
        return new OfferFacts(spells, pauses(), sold);
    }

    private Map<UUID, List<Span>> pauses() {
        Map<UUID, List<Span>> pauses = new HashMap<>();
        rows("select offer_id, paused_from, paused_to from offer_pause", row -> {
            LocalDate to = row.getObject(3, LocalDate.class);
            pauses.computeIfAbsent(id(row, 1), offer -> new ArrayList<>(1))
                    .add(new Span(day(row, 2), to == null ? null : to.plusDays(1)));
        });
        return pauses;
    }

    private Map<UUID, LocalDate> takenOver() {
        Map<UUID, LocalDate> days = new HashMap<>();
        rows(
                "select op.piece_id, d.doc_date from opening_piece op join document d on d.id = op.opening_id",
                row -> days.merge(id(row, 1), day(row, 2), (one, other) -> one.isBefore(other) ? one : other));
        return days;
    }

    private Map<UUID, LocalDate> lastDays(String query) {
        Map<UUID, LocalDate> days = new HashMap<>();
        rows(query, row -> days.merge(id(row, 1), day(row, 2), (one, other) -> one.isAfter(other) ? one : other));
        return days;
    }

    private List<PieceSale> sales(Groups groups, Map<UUID, BigDecimal> minutes) {
        List<PieceSale> sales = new ArrayList<>();
        rows(PARTS, row -> sale(row, groups, minutes, sales));
        return sales;
    }

    private static void sale(ResultSet row, Groups groups, Map<UUID, BigDecimal> minutes, List<PieceSale> sales)
            throws SQLException {
        UUID piece = id(row, 2);
        if (groups.put(piece, row.getObject(15, UUID.class))) {
            SaleParts parts = parts(row);
            sales.add(new PieceSale(
                    id(row, 1),
                    piece,
                    day(row, 3),
                    row.getString(16),
                    row.getBoolean(4),
                    parts,
                    BeforeAfter.work(parts.cost(), Amount.of(row.getLong(12)), Amount.of(row.getLong(13)))));
            minutes.put(piece, row.getBigDecimal(14));
        }
    }

    private static SaleParts parts(ResultSet row) throws SQLException {
        return new SaleParts(
                Amount.of(row.getLong(5)),
                Amount.of(row.getLong(6)),
                Amount.of(row.getLong(7)),
                Amount.of(row.getLong(8)),
                Amount.of(row.getLong(9)),
                Amount.of(row.getLong(10)),
                Amount.of(row.getLong(11)));
    }

    private static void spell(ResultSet row, Groups groups, List<Spell> spells) throws SQLException {
        UUID piece = id(row, 1);
        if (groups.put(piece, row.getObject(5, UUID.class))) {
            spells.add(new Spell(piece, id(row, 2), new Span(day(row, 3), row.getObject(4, LocalDate.class))));
        }
    }

    private static YearMonth month(ResultSet row) throws SQLException {
        return YearMonth.of(row.getInt(1), row.getInt(2));
    }

    private static UUID id(ResultSet row, int column) throws SQLException {
        return row.getObject(column, UUID.class);
    }

    private static LocalDate day(ResultSet row, int column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }

    private Map<UUID, String> names(String table) {
        Map<UUID, String> names = new HashMap<>();
        rows("select id, name from " + table, row -> names.put(id(row, 1), row.getString(2)));
        return names;
    }

    private Set<UUID> others() {
        Set<UUID> others = new HashSet<>();
        rows("select piece_id from piece_owner", row -> others.add(id(row, 1)));
        return others;
    }

    private void rows(String query, RowCallbackHandler taker) {
        rows(query, year, taker);
    }

    /** Each query is written a little differently each time, since the embedded database would answer the same one with what it found before. */
    private void rows(String query, Period period, RowCallbackHandler taker) {
        jdbc.sql(query + "\n-- " + asked++)
                .param("first", period.first())
                .param("last", period.last())
                .query(taker);
    }

    /** The style of each piece that came up; those of other people are none. */
    private final class Groups {

        private final Set<UUID> others = others();
        private final Map<UUID, String> styles = names("style");
        private final Map<UUID, List<String>> ofStyle = new HashMap<>();
        private final Map<UUID, List<String>> ofPiece = new LinkedHashMap<>();

        /** Whether the piece is hers. */
        private boolean put(UUID piece, @Nullable UUID style) {
            if (others.contains(piece)) {
                return false;
            }
            ofPiece.putIfAbsent(piece, ofStyle.computeIfAbsent(style, one -> List.of(styles.getOrDefault(one, ""))));
            return true;
        }

        private Collection<String> of(UUID piece) {
            return ofPiece.getOrDefault(piece, List.of(""));
        }

        private List<MoveFacts.Group> rows() {
            Function<Map.Entry<UUID, List<String>>, MoveFacts.Group> row =
                    one -> new MoveFacts.Group(one.getKey(), one.getValue().get(0));
            return ofPiece.entrySet().stream().map(row).toList();
        }
    }
}
