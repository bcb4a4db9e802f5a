package patinary.buying;

import java.sql.Date;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was bought at each source, and the credit it holds. */
@Repository
class SourceList {

    /** Amounts in minor units; {@code last} is the day of the latest receipt. */
    record Row(
            UUID id,
            String name,
            long receipts,
            long spent,
            @Nullable LocalDate last,
            long credit) {}

    private static final String ROWS = """
            select s.id, s.name,
                   (select count(*) from receipt r where r.source_id = s.id) as receipts,
                   coalesce((select sum(r.till_total_minor) from receipt r where r.source_id = s.id), 0) as spent_minor,
                   (select max(d.doc_date) from receipt r join document d on d.id = r.id
                    where r.source_id = s.id) as last_day,
                   coalesce((select sum(p.amount_minor) from posting p
                             where p.account = 'STORE_CREDIT_HELD' and p.party_id = s.id), 0) as credit_minor
            from source s""";

    private final JdbcClient jdbc;

    SourceList(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Row> all() {
        return jdbc.sql(ROWS + " order by lower(s.name)")
                .query((row, number) -> read(row))
                .list();
    }

    Optional<Row> one(UUID id) {
        return jdbc.sql(ROWS + " where s.id = ?")
                .param(id)
                .query((row, number) -> read(row))
                .optional();
    }

    private static Row read(java.sql.ResultSet row) throws java.sql.SQLException {
        Date last = row.getDate("last_day");
        return new Row(
                row.getObject("id", UUID.class),
                row.getString("name"),
                row.getLong("receipts"),
                row.getLong("spent_minor"),
                last == null ? null : last.toLocalDate(),
                row.getLong("credit_minor"));
    }
}
