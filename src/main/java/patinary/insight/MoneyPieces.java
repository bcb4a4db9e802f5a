package patinary.insight;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** The pieces behind the figures of money: each figure of a row is the sum of theirs, or is made of such sums. */
final class MoneyPieces {

    /**
     * One of them: either sold, or with money in it.
     *
     * @param sold the day it sold; null for a piece that lies in stock, or went from it without a sale
     * @param parts from price to profit; null for a piece that did not sell
     * @param work what supplies put on it at the bench, as a part of its landed cost; null for a piece that did not sell
     * @param minutes bench minutes ever noted on it; null for a piece that did not sell, or came back
     * @param tied its landed cost on the last day; null for a sold one
     * @param age days since it was found; null for a sold one
     * @param lay its landed cost at the end of each of the days, added up; null where it is said of another sale, or of none
     */
    record Line(
            UUID piece,
            @Nullable LocalDate sold,
            boolean cameBack,
            @Nullable SaleParts parts,
            @Nullable Amount work,
            @Nullable BigDecimal minutes,
            @Nullable Amount tied,
            @Nullable Long age,
            @Nullable Amount lay) {

        private static Line sold(
                MoneyFacts.PieceSale sale, Map<UUID, BigDecimal> minutes, @Nullable StockOfPiece stock) {
            return new Line(
                    sale.piece(),
                    sale.day(),
                    sale.cameBack(),
                    sale.parts(),
                    sale.work(),
                    sale.cameBack() ? null : minutes.getOrDefault(sale.piece(), BigDecimal.ZERO),
                    null,
                    null,
                    stock == null ? null : lay(stock));
        }

        private static Line tied(StockOfPiece one) {
            return new Line(one.piece(), null, false, null, null, null, one.closing(), one.age(), lay(one));
        }

        private static Amount lay(StockOfPiece stock) {
            return Amount.of(stock.unitDays().longValueExact());
        }

        /** Whether money lies in it on the last day. */
        public boolean lies() {
            return tied != null && !tied.isZero();
        }

        public @Nullable Long wholeMinutes() {
            return minutes == null ? null : Ratios.wholeMinutes(minutes);
        }
    }

    private MoneyPieces() {}

    /**
     * What sold first, the best first; then what money lies in, the longest first, and what went without a sale.
     *
     * @param minutes bench minutes on each piece
     */
    static List<Line> of(MoneyRow row, Map<UUID, BigDecimal> minutes) {
        Map<UUID, StockOfPiece> stock = new LinkedHashMap<>();
        if (row.stock() != null) {
            row.stock().forEach(one -> stock.put(one.piece(), one));
        }
        List<Line> lines = new ArrayList<>();
        row.sales().stream()
                .sorted(Comparator.comparing(
                                (MoneyFacts.PieceSale sale) -> sale.parts().profit())
                        .reversed())
                .forEach(sale -> lines.add(Line.sold(sale, minutes, gone(stock, sale.piece()))));
        stock.values().stream()
                .sorted(Comparator.comparing((StockOfPiece one) -> one.closing().isZero())
                        .thenComparing(Comparator.comparing(StockOfPiece::age).reversed()))
                .map(Line::tied)
                .forEach(lines::add);
        return List.copyOf(lines);
    }

    /** What lay in a piece that is in stock no more, told once. */
    private static @Nullable StockOfPiece gone(Map<UUID, StockOfPiece> stock, UUID piece) {
        StockOfPiece own = stock.get(piece);
        return own != null && own.closing().isZero() ? stock.remove(piece) : null;
    }
}
