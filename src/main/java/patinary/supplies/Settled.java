package patinary.supplies;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.ledger.Account;

/** What a count or a taking did, as its postings say. */
@Repository
class Settled {

    /** Cost that a count sent somewhere: to a piece, to write-offs, to found at count. */
    record Part(
            Account account,
            @Nullable UUID pieceId,
            @Nullable String code,
            @Nullable String title,
            long costMinor) {}

    private final JdbcClient jdbc;

    Settled(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** By how much a count changed the books, in the base unit: below zero where more was used than they knew. */
    BigDecimal quantity(UUID count) {
        return jdbc.sql("select coalesce(sum(quantity), 0) from posting where document_id = ?")
                .param(count)
                .query(BigDecimal.class)
                .single();
    }

    List<Part> parts(UUID count) {
        return jdbc.sql("""
                        select p.account, p.piece_id, x.code, x.title, cast(sum(p.amount_minor) as bigint) as cost_minor
                        from posting p
                        left join piece x on x.id = p.piece_id
                        where p.document_id = ? and p.account not in ('BENCH', 'SHELF')
                        group by p.account, p.piece_id, x.code, x.title
                        order by p.account, x.code
                        """).param(count).query(Part.class).list();
    }

    /** The cost that a taking brought off the shelf, whenever its receipt came. */
    long takenCost(UUID taking) {
        return jdbc.sql("""
                        select coalesce(sum(cost_minor), 0) from taking_cost where taking_id = :id
                        """).param("id", taking).query(Long.class).single();
    }

    /** What was taken before it was bought. */
    BigDecimal waiting(UUID document) {
        return jdbc.sql("select coalesce(sum(quantity), 0) from uncosted_use where document_id = ?")
                .param(document)
                .query(BigDecimal.class)
                .single();
    }
}
