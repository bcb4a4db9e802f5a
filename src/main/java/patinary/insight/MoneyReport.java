package patinary.insight;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.money.Amount;

/** Reads the money in pieces: a handful of queries, however many pieces there are. */
@Repository
@Transactional(readOnly = true)
class MoneyReport {

    private static final String SALES = """
            select s.sale_id, s.piece_id, s.sold_on, s.channel_id, s.came_back, s.price_minor, s.shipping_minor, s.refund_minor,
                   s.fee_minor, s.postage_minor, s.packaging_minor, s.cost_minor, f.supplies_minor, f.landed_minor, f.minutes
            from piece_sold s
            left join piece_figures f on f.piece_id = s.piece_id
            where s.sold_on between :first and :last
            order by s.sold_on, s.sale_id, s.piece_id""";

    private static final String STOCK = """
            select s.piece_id, f.found_on, s.doc_date, s.amount_minor
            from piece_figures f
            join piece_stock s on s.piece_id = f.piece_id
            where (f.in_stock_minor <> 0 or f.stocked_until >= :first) and s.doc_date <= :last
              and f.piece_id not in (select po.piece_id from piece_owner po)
            order by s.piece_id, s.doc_date""";

    /**
     * The page of the money.
     *
     * @param bands the three price bands, or null where nothing has a price
     * @param lines the profit shared over supply lines; null where the page is not by supply line
     */
    record Answer(
            MoneyTable table,
            @Nullable PriceBands bands,
            @Nullable LineShares lines) {}

    private record Facts(LocalDate first, LocalDate last) {}

    private record Asking(MoneyBy by, LocalDate first, LocalDate last, List<Only> chosen) {}

    private final JdbcClient jdbc;
    private final Moves moves;
    private final Readings readings;

    MoneyReport(JdbcClient jdbc, Moves moves, Readings readings) {
        this.jdbc = jdbc;
        this.moves = moves;
        this.readings = readings;
    }

    Answer answer(MoneyBy by, LocalDate first, LocalDate last, Narrowing narrowing) {
        return narrowing.kept(
                readings, new Asking(by, first, last, narrowing.chosen()), those -> reckoned(by, first, last, those));
    }

    private Answer reckoned(MoneyBy by, LocalDate first, LocalDate last, Narrowing narrowing) {
        MoneyFacts facts = narrowing.of(facts(first, last));
        int days = Math.toIntExact(ChronoUnit.DAYS.between(first, last) + 1);
        Map<UUID, Amount> prices = by == MoneyBy.PRICE ? moves.firstPrices() : Map.of();
        PriceBands bands = by == MoneyBy.PRICE ? moves.bands() : null;
        Map<UUID, LocalDate> offered = by == MoneyBy.SEASON ? moves.firstOffered() : Map.of();
        Map<UUID, List<String>> groups = switch (by) {
            case CHANNEL, PRICE, SEASON -> Map.of();
            default -> moves.groupsOfPieces(by.word());
        };
        MoneyTable.Grouping grouping = switch (by) {
            case CHANNEL -> MoneyTable.Grouping.ofSales(MoneyFacts.PieceSale::channel);
            case SEASON -> MoneyTable.Grouping.ofPieces(piece -> Quarters.groups(offered.get(piece)));
            case PRICE -> MoneyTable.Grouping.ofPieces(piece -> PriceBands.groups(prices.get(piece), bands));
            default -> MoneyTable.Grouping.ofPieces(piece -> groups.getOrDefault(piece, List.of("")));
        };
        LineShares lines = by == MoneyBy.LINE ? LineShares.of(facts.sales(), lineCosts(), touched(groups)) : null;
        return new Answer(MoneyTable.of(facts, grouping, days), bands, lines);
    }

    private static Set<UUID> touched(Map<UUID, List<String>> lines) {
        Set<UUID> touched = new HashSet<>();
        lines.forEach((piece, names) -> {
            if (!names.equals(List.of(""))) {
                touched.add(piece);
            }
        });
        return touched;
    }

    MoneyFacts facts(LocalDate first, LocalDate last) {
        return readings.ahead(new Facts(first, last), () -> sold(first, last).beside(stock(first, last)));
    }

    /** Bench minutes ever noted on each piece that sold in a period. */
    Map<UUID, BigDecimal> minutes(Period period) {
        return facts(period.first(), period.last()).minutes();
    }

    /** The same, for who does not ask what lay in stock. */
    MoneyFacts sold(LocalDate first, LocalDate last) {
        Map<UUID, String> channels = moves.channelNames();
        List<MoneyFacts.PieceSale> sales = new ArrayList<>();
        Map<UUID, BigDecimal> minutes = new HashMap<>();
        jdbc.sql(SALES).param("first", first).param("last", last).query(row -> {
            MoneyFacts.PieceSale sale = sale(row, channels);
            sales.add(sale);
            minutes.put(sale.piece(), row.getBigDecimal("minutes"));
        });
        return new MoneyFacts(List.copyOf(sales), List.of(), minutes);
    }

    private static MoneyFacts.PieceSale sale(ResultSet row, Map<UUID, String> channels) throws SQLException {
        SaleParts parts = new SaleParts(
                Amount.of(row.getLong("price_minor")),
                Amount.of(row.getLong("shipping_minor")),
                Amount.of(row.getLong("refund_minor")),
                Amount.of(row.getLong("fee_minor")),
                Amount.of(row.getLong("postage_minor")),
                Amount.of(row.getLong("packaging_minor")),
                Amount.of(row.getLong("cost_minor")));
        return new MoneyFacts.PieceSale(
                row.getObject("sale_id", UUID.class),
                row.getObject("piece_id", UUID.class),
                row.getObject("sold_on", LocalDate.class),
                channels.getOrDefault(row.getObject("channel_id", UUID.class), ""),
                row.getBoolean("came_back"),
                parts,
                BeforeAfter.work(
                        parts.cost(),
                        Amount.of(row.getLong("supplies_minor")),
                        Amount.of(row.getLong("landed_minor"))));
    }

    private List<StockOfPiece> stock(LocalDate first, LocalDate last) {
        Map<UUID, LocalDate> found = new HashMap<>();
        Map<UUID, List<StockOfPiece.Change>> changes = new LinkedHashMap<>();
        jdbc.sql(STOCK).param("first", first).param("last", last).query(row -> {
            UUID piece = row.getObject(1, UUID.class);
            LocalDate day = row.getObject(2, LocalDate.class);
            found.putIfAbsent(piece, day == null ? last : day);
            changes.computeIfAbsent(piece, one -> new ArrayList<>())
                    .add(new StockOfPiece.Change(row.getObject(3, LocalDate.class), row.getLong(4)));
        });
        List<StockOfPiece> stock = new ArrayList<>();
        changes.forEach((piece, those) -> {
            StockOfPiece one = StockOfPiece.of(piece, found.getOrDefault(piece, last), those, first, last);
            if (one.unitDays().signum() != 0 || !one.closing().isZero()) {
                stock.add(one);
            }
        });
        return List.copyOf(stock);
    }

    private Map<UUID, Map<String, Amount>> lineCosts() {
        Map<UUID, Map<String, Amount>> costs = new HashMap<>();
        jdbc.sql("select piece_id, line, cost_minor from piece_line_cost").query(row -> {
            costs.computeIfAbsent(row.getObject(1, UUID.class), piece -> new HashMap<>())
                    .put(row.getString(2), Amount.of(row.getLong(3)));
        });
        return costs;
    }
}
