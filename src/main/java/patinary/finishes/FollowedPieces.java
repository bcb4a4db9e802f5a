package patinary.finishes;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Reads what finishes took, what pieces are like, and what is left of supplies. */
@Repository
@Transactional(readOnly = true)
class FollowedPieces {

    /**
     * A piece on which a finish was followed.
     *
     * @param area in square centimetres: its own, else the usual one of its kind
     * @param minutes of the entries that followed the finish, shared equally over the pieces of each
     * @param costMinor of the supplies of those entries that went on the piece, as the postings say
     */
    record Row(
            UUID id,
            String code,
            String title,
            String state,
            @Nullable BigDecimal area,
            long minutes,
            long costMinor) {

        public boolean isDone() {
            return !state.equals("FOUND") && !state.equals("BENCH");
        }
    }

    /**
     * A piece that may be finished.
     *
     * @param area its own surface, else the usual one of its kind
     * @param usual whether it is the usual one
     */
    record Candidate(
            UUID id,
            String code,
            String title,
            @Nullable BigDecimal area,
            boolean usual,
            @Nullable UUID finishId) {

        public String name() {
            return code + " " + title;
        }
    }

    private static final String CANDIDATE = """
            select p.id, p.code, p.title, coalesce(p.area_cm2, k.area_cm2) as area,
                   p.area_cm2 is null and k.area_cm2 is not null as usual, p.planned_finish_id as finish_id
            from piece p
            left join object_kind k on k.id = p.kind_id
            """;

    private final JdbcClient jdbc;

    FollowedPieces(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Row> of(UUID finish) {
        return jdbc.sql("""
                        with work as (
                            select bp.piece_id, be.id as entry_id, d.doc_date,
                                   cast(be.minutes as numeric(20, 6))
                                       / (select count(*) from bench_piece one where one.bench_entry_id = be.id) as minutes
                            from bench_entry be
                            join bench_piece bp on bp.bench_entry_id = be.id
                            join document d on d.id = be.id
                            where be.finish_id = :finish),
                        spent as (
                            select po.piece_id, sum(po.amount_minor) as cost_minor
                            from posting po
                            join bench_entry be on be.id = coalesce(po.origin_id, po.document_id)
                            where be.finish_id = :finish and po.supply_id is not null and po.piece_id is not null
                              and po.account not in ('BENCH', 'SHELF')
                            group by po.piece_id)
                        select p.id, p.code, p.title, s.state, coalesce(p.area_cm2, k.area_cm2) as area,
                               cast(round(sum(w.minutes), 0) as bigint) as minutes,
                               cast(coalesce(max(spent.cost_minor), 0) as bigint) as cost_minor
                        from work w
                        join piece p on p.id = w.piece_id
                        join piece_state s on s.piece_id = p.id
                        left join object_kind k on k.id = p.kind_id
                        left join spent on spent.piece_id = p.id
                        group by p.id, p.code, p.title, s.state, p.area_cm2, k.area_cm2
                        order by max(w.doc_date) desc, p.code
                        """).param("finish", finish).query(Row.class).list();
    }

    List<Candidate> candidate(UUID piece) {
        return jdbc.sql(CANDIDATE + " where p.id = ?")
                .param(piece)
                .query(Candidate.class)
                .list();
    }

    /** The pieces found and on the bench. */
    List<Candidate> candidates() {
        return jdbc.sql(CANDIDATE + """
                        join piece_state s on s.piece_id = p.id
                        where s.state in ('FOUND', 'BENCH')
                        order by p.code
                        """).query(Candidate.class).list();
    }

    /** How many entries followed each finish. */
    Map<UUID, Long> times() {
        Map<UUID, Long> times = new HashMap<>();
        jdbc.sql("select finish_id, count(*) as times from bench_entry where finish_id is not null group by finish_id")
                .query(row -> {
                    times.put(row.getObject("finish_id", UUID.class), row.getLong("times"));
                });
        return times;
    }

    /** What is left on the bench at its average cost; where nothing is, the last of the supply that was bought. */
    Map<UUID, Estimate.Stock> stock(Collection<UUID> supplies) {
        Map<UUID, Estimate.Stock> stock = new HashMap<>();
        if (supplies.isEmpty()) {
            return stock;
        }
        jdbc.sql("""
                        with bought as (
                            select po.supply_id, po.quantity, po.amount_minor,
                                   row_number() over (partition by po.supply_id
                                       order by d.doc_date desc, po.document_id desc, po.amount_minor desc) as latest
                            from posting po
                            join document d on d.id = po.document_id
                            where po.supply_id in (:supplies) and po.account in ('BENCH', 'SHELF')
                              and d.kind in ('OPENING', 'RECEIPT') and po.quantity > 0)
                        select s.id, coalesce(l.quantity, 0) as left_quantity, coalesce(l.cost_minor, 0) as left_minor,
                               coalesce(b.quantity, 0) as bought, coalesce(b.amount_minor, 0) as bought_minor
                        from supply s
                        left join stock_left l on l.supply_id = s.id and l.place = 'BENCH'
                        left join bought b on b.supply_id = s.id and b.latest = 1
                        where s.id in (:supplies)
                        """).param("supplies", supplies).query(row -> {
            BigDecimal left = row.getBigDecimal("left_quantity");
            boolean isLeft = left.signum() > 0;
            stock.put(
                    row.getObject("id", UUID.class),
                    new Estimate.Stock(
                            left,
                            isLeft ? row.getLong("left_minor") : row.getLong("bought_minor"),
                            isLeft ? left : row.getBigDecimal("bought"),
                            isLeft));
        });
        return stock;
    }
}
