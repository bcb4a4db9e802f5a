package patinary.bringing;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.ledger.Trail;

/** What files brought in. */
@Repository
class Imports {

    private static final String ROW = """
            select i.id, i.file_name, c.name as channel, i.brought_in_at, i.sales, i.undone_at,
                   (select count(*) from sales_import_sale s where s.import_id = i.id) as left_over
            from sales_import i
            join channel c on c.id = i.channel_id
            """;

    /**
     * An import.
     *
     * @param sales how many sales came in with it
     * @param left how many of them are still in the books
     */
    record Row(
            UUID id,
            String fileName,
            String channel,
            Instant broughtInAt,
            int sales,
            @Nullable Instant undoneAt,
            long left) {}

    /** A sale that came in with an import. */
    record Brought(UUID saleId, LocalDate docDate, String orderReference, String buyer, long priceMinor) {}

    private final JdbcClient jdbc;
    private final Clock clock;
    private final Trail trail;

    Imports(JdbcClient jdbc, Clock clock, Trail trail) {
        this.jdbc = jdbc;
        this.clock = clock;
        this.trail = trail;
    }

    List<Row> latest(int most) {
        return jdbc.sql(ROW + " order by i.brought_in_at desc, i.id fetch first " + most + " rows only")
                .query((row, number) -> row(row))
                .list();
    }

    Optional<Row> find(UUID id) {
        return jdbc.sql(ROW + " where i.id = ?")
                .param(id)
                .query((row, number) -> row(row))
                .optional();
    }

    List<Brought> sales(UUID id) {
        return jdbc.sql("""
                        select s.id as sale_id, d.doc_date, s.order_reference, s.buyer,
                               coalesce((select sum(p.price_minor) from sale_part p where p.sale_id = s.id), 0) as price_minor
                        from sales_import_sale i
                        join sale s on s.id = i.sale_id
                        join document d on d.id = s.id
                        where i.import_id = ?
                        order by d.doc_date, s.order_reference, s.id""").param(id).query(Brought.class).list();
    }

    void add(UUID id, String fileName, UUID channel, Collection<UUID> sales) {
        trail.outOf(fileName);
        trail.thing("sales_import", id);
        jdbc.sql("insert into sales_import (id, file_name, channel_id, brought_in_at, sales) values (?, ?, ?, ?, ?)")
                .params(id, fileName, channel, now(), sales.size())
                .update();
        for (UUID sale : sales) {
            jdbc.sql("insert into sales_import_sale (import_id, sale_id) values (?, ?)")
                    .params(id, sale)
                    .update();
        }
    }

    void undone(UUID id) {
        trail.thing("sales_import", id);
        jdbc.sql("update sales_import set undone_at = ? where id = ?")
                .params(now(), id)
                .update();
    }

    private OffsetDateTime now() {
        return clock.instant().atOffset(ZoneOffset.UTC);
    }

    private static Row row(ResultSet row) throws SQLException {
        OffsetDateTime undone = row.getObject("undone_at", OffsetDateTime.class);
        return new Row(
                row.getObject("id", UUID.class),
                row.getString("file_name"),
                row.getString("channel"),
                row.getObject("brought_in_at", OffsetDateTime.class).toInstant(),
                row.getInt("sales"),
                undone == null ? null : undone.toInstant(),
                row.getLong("left_over"));
    }
}
