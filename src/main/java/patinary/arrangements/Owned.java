package patinary.arrangements;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.money.Percent;

/** Pieces that belong to other people: their terms, and how they stand. */
@Repository
@Transactional(readOnly = true)
class Owned {

    /** What is agreed about a piece. Amounts in minor units; null where it is not agreed. */
    record Terms(
            UUID pieceId,
            String arrangement,
            String owner,
            LocalDate since,
            @Nullable Long priceMinor,
            @Nullable LocalDate dueOn,
            @Nullable BigDecimal sharePercent,
            @Nullable Long shareMinor,
            String note) {}

    /** How a piece stands, with what it was worth so far; all from the view {@code piece_of_others}. */
    record Row(
            UUID pieceId,
            String code,
            String title,
            String arrangement,
            String owner,
            LocalDate since,
            @Nullable Long priceMinor,
            @Nullable LocalDate dueOn,
            @Nullable BigDecimal sharePercent,
            @Nullable Long shareMinor,
            String state,
            @Nullable LocalDate stateSince,
            BigDecimal minutes,
            long suppliesMinor,
            long purchaseMinor,
            long salesMinor,
            long profitMinor,
            @Nullable UUID saleId) {

        public boolean isCommission() {
            return arrangement.equals(Arrangement.COMMISSION.name());
        }

        /** Whether it is still with her, or for sale. */
        public boolean isHere() {
            return !state.equals("SOLD") && !state.equals("GONE");
        }

        public @Nullable Percent percent() {
            return sharePercent == null ? null : new Percent(sharePercent);
        }
    }

    /** What is still owed for a sale of such pieces. */
    record Owed(UUID saleId, LocalDate docDate, String owners, long amountMinor) {}

    private static final String ROWS = """
        select piece_id, code, title, arrangement, owner, since, price_minor, due_on, share_percent, share_minor, state,
               state_since, minutes, supplies_minor, purchase_minor, sales_minor, profit_minor, sale_id
        from piece_of_others
        order by case when state in ('SOLD', 'GONE') then 1 else 0 end, coalesce(due_on, since), code\
        """;

    private static final String OWED = """
        select o.receipt_id as sale_id, d.doc_date, o.amount_minor,
               (select min(po.owner) || case when min(po.owner) < max(po.owner) then ', ' || max(po.owner) else '' end
                from sale_piece sp
                join piece_owner po on po.piece_id = sp.piece_id
                where sp.sale_id = s.id) as owners
        from owed_by_shop o
        join sale s on s.id = o.receipt_id
        join document d on d.id = s.id
        order by d.doc_date, d.id\
        """;

    private final JdbcClient jdbc;
    private final Trail trail;

    Owned(JdbcClient jdbc, Trail trail) {
        this.jdbc = jdbc;
        this.trail = trail;
    }

    /** Those that are here first, by the day they are due or came. */
    List<Row> all() {
        return jdbc.sql(ROWS).query(Row.class).list();
    }

    List<Owed> owed() {
        return jdbc.sql(OWED).query(Owed.class).list();
    }

    Optional<Terms> find(UUID piece) {
        return jdbc.sql("""
            select piece_id, arrangement, owner, since, price_minor, due_on, share_percent, share_minor, note
            from piece_owner where piece_id = ?\
            """).param(piece).query(Terms.class).optional();
    }

    static boolean isMoreThanAll(Percent percent) {
        return percent.value().compareTo(BigDecimal.valueOf(100)) > 0;
    }

    String title(UUID piece) {
        return jdbc.sql("select title from piece where id = ?")
                .param(piece)
                .query(String.class)
                .single();
    }

    @Transactional
    void add(Terms terms) {
        trail.thing("piece", terms.pieceId());
        jdbc.sql("""
            insert into piece_owner (piece_id, arrangement, owner, since, price_minor, due_on, share_percent,
                                     share_minor, note, version)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, 0)\
            """)
                .params(
                        terms.pieceId(),
                        terms.arrangement(),
                        terms.owner(),
                        terms.since(),
                        terms.priceMinor(),
                        terms.dueOn(),
                        terms.sharePercent(),
                        terms.shareMinor(),
                        terms.note())
                .update();
    }

    long version(UUID piece) {
        return jdbc.sql("select version from piece_owner where piece_id = ?")
                .param(piece)
                .query(Long.class)
                .single();
    }

    /** @throws OptimisticLockingFailureException where somebody changed it since its form was drawn */
    @Transactional
    void change(Terms terms, long version) {
        trail.thing("piece", terms.pieceId());
        int changed = jdbc.sql("""
            update piece_owner
            set owner = ?, since = ?, price_minor = ?, due_on = ?, share_percent = ?, share_minor = ?, note = ?,
                version = version + 1
            where piece_id = ? and version = ?\
            """)
                .params(
                        terms.owner(),
                        terms.since(),
                        terms.priceMinor(),
                        terms.dueOn(),
                        terms.sharePercent(),
                        terms.shareMinor(),
                        terms.note(),
                        terms.pieceId(),
                        version)
                .update();
        if (changed == 0) {
            throw new OptimisticLockingFailureException("Terms of piece " + terms.pieceId() + " are stale");
        }
    }

    @Transactional
    void remove(UUID piece) {
        trail.thing("piece", piece);
        jdbc.sql("delete from piece_owner where piece_id = ?").param(piece).update();
    }
}
