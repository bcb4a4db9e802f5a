package patinary.bench;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.ledger.Account;
import patinary.measure.Dimension;

/** What the supplies of one entry cost, as the postings say: on its own day, from later receipts, from counts. */
@Repository
class BenchCosts {

    /**
     * A supply of the entry.
     *
     * @param quantity as typed, all lines of the entry together, in the base unit
     * @param costMinor what it cost so far
     * @param countedMinor how much of that a count added, or took away
     * @param waiting what no receipt has given a cost yet, in the base unit
     */
    record Used(
            UUID supplyId,
            String name,
            String lineName,
            Dimension dimension,
            BigDecimal quantity,
            long costMinor,
            long countedMinor,
            BigDecimal waiting) {}

    /** A share of a supply's cost: of a piece, or of the waste where it went on none. */
    record Share(
            UUID supplyId,
            Account account,
            @Nullable UUID pieceId,
            @Nullable String code,
            @Nullable String title,
            long costMinor) {}

    private final JdbcClient jdbc;

    BenchCosts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Used> used(UUID entry) {
        return jdbc.sql("""
                        select u.supply_id, s.name, l.name as line_name, s.dimension, u.quantity,
                               coalesce(c.cost_minor, 0) as cost_minor,
                               coalesce(c.counted_minor, 0) as counted_minor,
                               coalesce((select sum(w.quantity) from uncosted_use w
                                         where w.document_id = :entry and w.supply_id = u.supply_id), 0) as waiting
                        from (select supply_id, sum(quantity) as quantity, min(line) as line
                              from bench_use where bench_entry_id = :entry group by supply_id) u
                        join supply s on s.id = u.supply_id
                        join supply_line l on l.id = s.supply_line_id
                        left join (select p.supply_id, cast(sum(p.amount_minor) as bigint) as cost_minor,
                                          cast(sum(case when d.kind = 'COUNT' then p.amount_minor else 0 end) as bigint)
                                              as counted_minor
                                   from posting_about p join document d on d.id = p.document_id
                                   where p.about_id = :entry
                                     and p.supply_id is not null and p.account not in ('BENCH', 'SHELF')
                                   group by p.supply_id) c on c.supply_id = u.supply_id
                        order by u.line
                        """).param("entry", entry).query(Used.class).list();
    }

    List<Share> shares(UUID entry) {
        return jdbc.sql("""
                        select p.supply_id, p.account, p.piece_id, x.code, x.title,
                               cast(sum(p.amount_minor) as bigint) as cost_minor
                        from posting_about p
                        left join piece x on x.id = p.piece_id
                        where p.about_id = :entry
                          and p.supply_id is not null and p.account not in ('BENCH', 'SHELF')
                        group by p.supply_id, p.account, p.piece_id, x.code, x.title
                        order by p.supply_id, x.code, p.account
                        """).param("entry", entry).query(Share.class).list();
    }
}
