package patinary.insight;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** The pieces behind a figure of money. */
final class MoneyPieces {

    /**
     * One of them: either sold, or with money in it.
     *
     * @param sold the day it sold; null for a piece that lies in stock
     * @param days since it was found; null for a sold one
     */
    record Line(
            UUID piece,
            @Nullable LocalDate sold,
            boolean cameBack,
            @Nullable Amount cost,
            @Nullable Amount profit,
            @Nullable Amount tied,
            @Nullable Long days) {

        private static Line sold(MoneyFacts.PieceSale sale) {
            return new Line(
                    sale.piece(),
                    sale.day(),
                    sale.cameBack(),
                    sale.parts().cost(),
                    sale.parts().profit(),
                    null,
                    null);
        }

        private static Line tied(StockOfPiece one) {
            return new Line(one.piece(), null, false, null, null, one.closing(), one.age());
        }
    }

    private MoneyPieces() {}

    /** What sold first, the best first; then what money lies in, the longest first. */
    static List<Line> of(MoneyRow row) {
        List<StockOfPiece> stock = row.stock() == null ? List.of() : row.stock();
        return Stream.concat(
                        row.sales().stream()
                                .sorted(Comparator.comparing((MoneyFacts.PieceSale sale) ->
                                                sale.parts().profit())
                                        .reversed())
                                .map(Line::sold),
                        stock.stream()
                                .filter(one -> !one.closing().isZero())
                                .sorted(Comparator.comparing(StockOfPiece::age).reversed())
                                .map(Line::tied))
                .toList();
    }
}
