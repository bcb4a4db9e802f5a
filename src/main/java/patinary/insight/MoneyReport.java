package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;

/** Reads the money in pieces: a handful of queries, however many pieces there are. */
@Repository
@Transactional(readOnly = true)
class MoneyReport {

    private static final String SALES = """
            select sale_id, piece_id, sold_on, channel, came_back, price_minor, shipping_minor, refund_minor, fee_minor,
                   postage_minor, packaging_minor, cost_minor
            from piece_sold
            where sold_on between :first and :last
            order by sold_on, sale_id, piece_id""";

    private static final String STOCK = """
            select piece_id, doc_date, cast(sum(amount_minor) as bigint) as amount_minor
            from posting
            where account = 'PIECES' and piece_id is not null and doc_date <= :last
              and not exists (select 1 from piece_owner po where po.piece_id = posting.piece_id)
            group by piece_id, doc_date""";

    private static final String FIGURES =
            "select piece_id, minutes, found_on, supplies_minor, landed_minor from piece_figures";

    private static final int MONTHS = 3;

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

    private record SaleRow(
            UUID saleId,
            UUID pieceId,
            LocalDate soldOn,
            String channel,
            boolean cameBack,
            long priceMinor,
            long shippingMinor,
            long refundMinor,
            long feeMinor,
            long postageMinor,
            long packagingMinor,
            long costMinor) {

        MoneyFacts.PieceSale sale(@Nullable FigureRow figure) {
            SaleParts parts = new SaleParts(
                    Amount.of(priceMinor),
                    Amount.of(shippingMinor),
                    Amount.of(refundMinor),
                    Amount.of(feeMinor),
                    Amount.of(postageMinor),
                    Amount.of(packagingMinor),
                    Amount.of(costMinor));
            Amount work = figure == null
                    ? Amount.ZERO
                    : BeforeAfter.work(
                            parts.cost(), Amount.of(figure.suppliesMinor()), Amount.of(figure.landedMinor()));
            return new MoneyFacts.PieceSale(saleId, pieceId, soldOn, channel, cameBack, parts, work);
        }
    }

    private record StockRow(UUID pieceId, LocalDate docDate, long amountMinor) {}

    private record FigureRow(
            UUID pieceId, BigDecimal minutes, @Nullable LocalDate foundOn, long suppliesMinor, long landedMinor) {}

    private record GroupRow(UUID pieceId, String name) {}

    private final JdbcClient jdbc;

    MoneyReport(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Answer answer(MoneyBy by, LocalDate first, LocalDate last, Narrowing narrowing) {
        MoneyFacts facts = narrowing.of(facts(first, last));
        int days = Math.toIntExact(ChronoUnit.DAYS.between(first, last) + 1);
        Map<UUID, Amount> prices = by == MoneyBy.PRICE ? prices() : Map.of();
        PriceBands bands = prices.isEmpty() ? null : PriceBands.of(prices.values());
        Map<UUID, List<String>> groups = by.ofPieces() && by != MoneyBy.PRICE ? groups(by) : Map.of();
        MoneyTable.Grouping grouping = switch (by) {
            case CHANNEL -> MoneyTable.Grouping.ofSales(MoneyFacts.PieceSale::channel);
            case SEASON ->
                MoneyTable.Grouping.ofSales(sale -> String.valueOf((sale.day().getMonthValue() - 1) / MONTHS + 1));
            case PRICE -> MoneyTable.Grouping.ofPieces(piece -> band(prices.get(piece), bands));
            default -> MoneyTable.Grouping.ofPieces(piece -> groups.getOrDefault(piece, List.of("")));
        };
        LineShares lines = by == MoneyBy.LINE ? LineShares.of(facts.sales(), lineCosts(), touched(groups)) : null;
        return new Answer(MoneyTable.of(facts, grouping, days), bands, lines);
    }

    private static Collection<String> band(@Nullable Amount price, @Nullable PriceBands bands) {
        return price == null || bands == null
                ? List.of("")
                : List.of(String.valueOf(bands.of(price).ordinal() + 1));
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
        Map<UUID, FigureRow> figures = jdbc.sql(FIGURES).query(FigureRow.class).stream()
                .collect(Collectors.toMap(FigureRow::pieceId, Function.identity()));
        List<MoneyFacts.PieceSale> sales =
                jdbc.sql(SALES).param("first", first).param("last", last).query(SaleRow.class).stream()
                        .map(row -> row.sale(figures.get(row.pieceId())))
                        .toList();
        Map<UUID, BigDecimal> minutes = new HashMap<>();
        figures.forEach((piece, figure) -> minutes.put(piece, figure.minutes()));
        return new MoneyFacts(sales, stock(figures, first, last), minutes);
    }

    private List<StockOfPiece> stock(Map<UUID, FigureRow> figures, LocalDate first, LocalDate last) {
        Map<UUID, List<StockOfPiece.Change>> changes = new HashMap<>();
        jdbc.sql(STOCK).param("last", last).query(StockRow.class).stream()
                .forEach(row -> changes.computeIfAbsent(row.pieceId(), piece -> new ArrayList<>())
                        .add(new StockOfPiece.Change(row.docDate(), row.amountMinor())));
        List<StockOfPiece> stock = new ArrayList<>();
        changes.forEach((piece, those) -> {
            FigureRow figure = figures.get(piece);
            LocalDate found = figure == null ? null : figure.foundOn();
            StockOfPiece one = StockOfPiece.of(piece, found == null ? last : found, those, first, last);
            if (one.unitDays().signum() != 0 || !one.closing().isZero()) {
                stock.add(one);
            }
        });
        return List.copyOf(stock);
    }

    private Map<UUID, List<String>> groups(MoneyBy by) {
        return jdbc
                .sql("select piece_id, name from piece_group where grouped_by = ?")
                .param(by.word())
                .query(GroupRow.class)
                .stream()
                .collect(Collectors.groupingBy(
                        GroupRow::pieceId, Collectors.mapping(GroupRow::name, Collectors.toList())));
    }

    private Map<UUID, Map<String, Amount>> lineCosts() {
        Map<UUID, Map<String, Amount>> costs = new HashMap<>();
        jdbc.sql("select piece_id, line, cost_minor from piece_line_cost").query(row -> {
            costs.computeIfAbsent(row.getObject(1, UUID.class), piece -> new HashMap<>())
                    .put(row.getString(2), Amount.of(row.getLong(3)));
        });
        return costs;
    }

    private Map<UUID, Amount> prices() {
        Map<UUID, Amount> prices = new HashMap<>();
        jdbc.sql("select piece_id, price_minor from piece_asked_first").query(row -> {
            prices.put(row.getObject(1, UUID.class), Amount.of(row.getLong(2)));
        });
        return prices;
    }
}
