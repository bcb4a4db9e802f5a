package patinary.supplies;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.ledger.StockPlace;
import patinary.money.Amount;

/** How long a tool lasts: its uses as they were noted, and what the postings took of it. */
@Repository
class ToolStory {

    private static final String COUNTS = """
            select counted_on, waste from count_outcome where supply_id = ? and place = 'BENCH'
            order by counted_on, cast(count_id as varchar(36))""";

    private static final String USED = """
            select d.doc_date, sum(u.tool_uses) as uses
            from bench_use u join document d on d.id = u.bench_entry_id
            where u.supply_id = ? and u.tool_uses is not null
            group by d.doc_date""";

    private static final String WORN = """
            select p.doc_date, sum(-p.quantity) as quantity
            from posting p join document d on d.id = p.document_id
            where p.supply_id = ? and p.account = 'BENCH' and d.kind in ('BENCH_ENTRY', 'COUNT')
            group by p.doc_date""";

    private final JdbcClient jdbc;

    ToolStory(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What there is to say of a tool whose price is spread over its uses; empty of any other supply. */
    Optional<ToolView> of(SupplyCatalog.Known supply, List<SupplyStory.Left> left) {
        return ToolUse.size(supply.facts()).map(size -> view(supply, size, left));
    }

    private ToolView view(SupplyCatalog.Known supply, BigDecimal size, List<SupplyStory.Left> places) {
        Optional<SupplyStory.Left> bench = places.stream()
                .filter(place -> place.place() == StockPlace.BENCH)
                .findFirst();
        List<ToolSpan> spans = spans(supply.id());
        ToolView.Lasted last = spans.stream()
                .filter(ToolSpan::tells)
                .reduce((earlier, later) -> later)
                .map(span -> new ToolView.Lasted(span.lasted(), thought(supply, span, size)))
                .orElse(null);
        return ToolView.of(
                size,
                bench.map(SupplyStory.Left::quantity).orElse(BigDecimal.ZERO),
                Amount.of(bench.map(SupplyStory.Left::costMinor).orElse(0L)),
                spans.get(spans.size() - 1).uses(),
                last);
    }

    private List<ToolSpan> spans(UUID supply) {
        return ToolSpan.of(
                jdbc.sql(COUNTS).param(supply).query(ToolSpan.Count.class).list(),
                jdbc.sql(USED).param(supply).query(ToolSpan.Used.class).list(),
                jdbc.sql(WORN).param(supply).query(ToolSpan.Worn.class).list());
    }

    /** What was thought when it was first used: a correction made since is about the next one. */
    private static int thought(SupplyCatalog.Known supply, ToolSpan span, BigDecimal now) {
        return ToolUse.lasts(
                span.first() == null
                        ? now
                        : ToolUse.size(supply.measuresOn(span.first())).orElse(now));
    }
}
