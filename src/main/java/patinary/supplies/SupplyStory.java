package patinary.supplies;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.ledger.DocumentKind;
import patinary.ledger.StockPlace;
import patinary.web.Page;
import patinary.web.Window;

/** What happened to one supply: what is left, what came in, every movement; all from the postings. */
@Repository
class SupplyStory {

    /** What is left at one place. */
    record Left(StockPlace place, BigDecimal quantity, long costMinor, BigDecimal uncostedQuantity) {}

    /** What one receipt line, or the first day, brought in. */
    record LotIn(
            UUID documentId,
            DocumentKind kind,
            LocalDate dated,
            @Nullable String source,
            StockPlace place,
            BigDecimal quantity,
            long costMinor,
            boolean estimated) {}

    /** What one document moved at one place, and what was left there after it. */
    record Movement(
            UUID documentId,
            DocumentKind kind,
            LocalDate dated,
            StockPlace place,
            BigDecimal quantity,
            long costMinor,
            BigDecimal runningQuantity,
            long runningMinor) {

        /** Where the document is shown; null where it has no page. */
        public @Nullable String path() {
            return DocumentPaths.of(kind, documentId);
        }
    }

    private final JdbcClient jdbc;

    SupplyStory(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Left> left(UUID supply) {
        return jdbc.sql("""
                        select place, quantity, cost_minor, uncosted_quantity
                        from stock_left where supply_id = ? order by place
                        """).param(supply).query(Left.class).list();
    }

    List<LotIn> lots(UUID supply) {
        return jdbc.sql("""
                        select p.document_id, d.kind, p.doc_date as dated, s.name as source, p.account as place, p.quantity,
                               case when d.kind = 'BENCH_ENTRY'
                                    then (select cast(coalesce(sum(m.amount_minor), 0) as bigint) from posting_about m
                                          where m.about_id = d.id and m.supply_id = p.supply_id and m.account = p.account)
                                    else p.amount_minor end as cost_minor, p.estimated
                        from posting p
                        join document d on d.id = p.document_id
                        left join receipt r on r.id = d.id
                        left join source s on s.id = r.source_id
                        where p.supply_id = ? and p.account in ('BENCH', 'SHELF') and p.quantity > 0
                          and d.kind in ('RECEIPT', 'OPENING', 'BENCH_ENTRY', 'SUPPLY_GIFT')
                        order by p.doc_date desc, d.kind_rank desc, cast(d.id as varchar(36)) desc, p.line
                        """).param(supply).query(LotIn.class).list();
    }

    Page<Movement> movements(UUID supply, Window window) {
        long total = jdbc.sql("""
                        select count(*)
                        from (select document_id, account from posting
                              where supply_id = ? and account in ('BENCH', 'SHELF')
                              group by document_id, account) m
                        """).param(supply).query(Long.class).single();
        List<Movement> rows = jdbc.sql("""
                        select m.document_id, d.kind, d.doc_date as dated, m.place, m.quantity, m.cost_minor,
                               sum(m.quantity) over (partition by m.place
                                   order by d.doc_date, d.kind_rank, cast(d.id as varchar(36))) as running_quantity,
                               cast(sum(m.cost_minor) over (partition by m.place
                                   order by d.doc_date, d.kind_rank, cast(d.id as varchar(36))) as bigint) as running_minor
                        from (select document_id, account as place, sum(quantity) as quantity,
                                     cast(sum(amount_minor) as bigint) as cost_minor
                              from posting
                              where supply_id = :supply and account in ('BENCH', 'SHELF')
                              group by document_id, account) m
                        join document d on d.id = m.document_id
                        order by d.doc_date desc, d.kind_rank desc, cast(d.id as varchar(36)) desc, m.place
                        offset :offset rows fetch next :size rows only
                        """)
                .param("supply", supply)
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Movement.class)
                .list();
        return Page.of(window, rows, total);
    }
}
