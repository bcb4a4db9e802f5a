package patinary.shelflife;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** The lots with their days, and the days themselves. */
@Repository
class Lots {

    private static final String ROWS = """
            select k.document_id, k.supply_id, s.name, s.dimension, k.kind, k.came_on, k.quantity, k.left_quantity,
                   k.opened_on, k.use_by, k.days_opened
            from lot_keeps k join supply s on s.id = k.supply_id
            """;

    private static final String ORDER = " order by k.came_on, cast(k.document_id as varchar(36))";

    private final JdbcClient jdbc;

    Lots(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** All lots of which something is left, the oldest first. */
    List<Lot> left() {
        return jdbc.sql(ROWS + " where k.left_quantity > 0" + ORDER)
                .query(Lot.class)
                .list();
    }

    /** Every lot of a supply, the oldest first. */
    List<Lot> of(UUID supply) {
        return jdbc.sql(ROWS + " where k.supply_id = ?" + ORDER)
                .param(supply)
                .query(Lot.class)
                .list();
    }

    /** Keeps the days of one lot; nothing is kept where neither is known. */
    @Transactional
    void keep(UUID document, UUID supply, Optional<LocalDate> openedOn, Optional<LocalDate> useBy) {
        jdbc.sql("delete from lot_date where document_id = ? and supply_id = ?")
                .params(document, supply)
                .update();
        if (openedOn.isPresent() || useBy.isPresent()) {
            jdbc.sql("insert into lot_date (document_id, supply_id, opened_on, use_by)"
                            + " values (:document, :supply, cast(:opened as date), cast(:useBy as date))")
                    .param("document", document)
                    .param("supply", supply)
                    .param("opened", text(openedOn))
                    .param("useBy", text(useBy))
                    .update();
        }
    }

    private static @Nullable String text(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse(null);
    }
}
