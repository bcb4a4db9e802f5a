package patinary.buying;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.ledger.DocumentKind;
import patinary.ledger.Readings;

/** What the receipts typed last were about, so that what was used last stands first in a list. */
@Repository
class LastBought {

    /** As many receipts as say what she buys now; the page does not become slower with those of all years. */
    private static final int RECEIPTS = 300;

    private static final String LATELY = """
            select typed.recorded_at, r.source_id, p.kind_id, p.style_id
            from (select d.id, d.recorded_at from document d where d.kind_rank = %d
                  order by d.kind_rank desc, d.recorded_at desc
                  fetch first %d rows only) typed
            join receipt r on r.id = typed.id
            left join receipt_piece rp on rp.receipt_id = r.id
            left join piece p on p.id = rp.piece_id""".formatted(DocumentKind.RECEIPT.ordinal(), RECEIPTS);

    /** When something was typed last, by its id; what none of the latest receipts names is not there. */
    record Used(Map<UUID, Instant> sources, Map<UUID, Instant> kinds, Map<UUID, Instant> styles) {

        private Used() {
            this(new HashMap<>(), new HashMap<>(), new HashMap<>());
        }

        private void note(ResultSet row) throws SQLException {
            Instant at = row.getTimestamp("recorded_at").toInstant();
            add(sources, row.getObject("source_id", UUID.class), at);
            add(kinds, row.getObject("kind_id", UUID.class), at);
            add(styles, row.getObject("style_id", UUID.class), at);
        }

        private static void add(Map<UUID, Instant> used, @Nullable UUID id, Instant at) {
            if (id != null) {
                used.merge(id, at, (one, other) -> one.isAfter(other) ? one : other);
            }
        }

        /** The last used first, those that were not used after them. */
        static Comparator<UUID> lastFirst(Map<UUID, Instant> used) {
            return Comparator.comparing(used::get, Comparator.nullsLast(Comparator.reverseOrder()));
        }
    }

    private final JdbcClient jdbc;
    private final Readings readings;

    LastBought(JdbcClient jdbc, Readings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    /** Kept until anything changes: each list that a phone takes with it asks for it. */
    Used read() {
        return readings.of(Used.class, () -> {
            Used used = new Used();
            jdbc.sql(LATELY).query(used::note);
            return used;
        });
    }
}
