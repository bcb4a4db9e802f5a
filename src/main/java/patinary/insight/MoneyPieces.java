package patinary.insight;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.money.Amount;
import patinary.web.Page;
import patinary.web.Window;

/** The pieces behind a figure of money. */
@Repository
@Transactional(readOnly = true)
class MoneyPieces {

    /**
     * One of them: either sold, or with money in it.
     *
     * @param sold the day it sold; null for a piece that lies in stock
     * @param days since it was found; null for a sold one
     */
    record Line(
            UUID piece,
            String code,
            String title,
            @Nullable LocalDate sold,
            boolean cameBack,
            @Nullable Amount cost,
            @Nullable Amount profit,
            @Nullable Amount tied,
            @Nullable Long days) {

        private static Line sold(MoneyFacts.PieceSale sale) {
            return new Line(
                    sale.piece(),
                    "",
                    "",
                    sale.day(),
                    sale.cameBack(),
                    sale.parts().cost(),
                    sale.parts().profit(),
                    null,
                    null);
        }

        private static Line tied(StockOfPiece one) {
            return new Line(one.piece(), "", "", null, false, null, null, one.closing(), one.age());
        }

        private Line named(@Nullable Name name) {
            return name == null
                    ? this
                    : new Line(piece, name.code(), name.title(), sold, cameBack, cost, profit, tied, days);
        }
    }

    private record Name(UUID id, String code, String title) {}

    private final JdbcClient jdbc;

    MoneyPieces(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What sold first, the best first; then what money lies in, the longest first. */
    Page<Line> of(MoneyRow row, Window window) {
        List<StockOfPiece> stock = row.stock() == null ? List.of() : row.stock();
        List<Line> lines = Stream.concat(
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
        List<Line> shown =
                lines.stream().skip(window.offset()).limit(window.size()).toList();
        Map<UUID, Name> names = names(shown);
        return Page.of(
                window,
                shown.stream().map(line -> line.named(names.get(line.piece()))).toList(),
                lines.size());
    }

    private Map<UUID, Name> names(List<Line> lines) {
        if (lines.isEmpty()) {
            return Map.of();
        }
        return jdbc
                .sql("select id, code, title from piece where id in (:ids)")
                .param("ids", lines.stream().map(Line::piece).distinct().toList())
                .query(Name.class)
                .stream()
                .collect(Collectors.toMap(Name::id, Function.identity()));
    }
}
