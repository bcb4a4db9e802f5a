package patinary.figures;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;
import patinary.ledger.Batches;

/** The tables of the touched ids: fills and empties them. No id stands there twice, or its figures would count twice. */
@Repository
class TouchedIds {

    private static final int BATCH = 1_000;

    private final JdbcTemplate jdbc;

    TouchedIds(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Adds ids to a table of touched ids that is empty. */
    void set(Touched touched, Collection<UUID> ids) {
        jdbc.batchUpdate(
                "insert into " + touched.table() + " (" + touched.key() + ") values (?)",
                List.copyOf(ids),
                BATCH,
                (statement, id) -> statement.setObject(1, id));
    }

    /**
     * Adds what a query finds and is not there yet.
     *
     * @param query gives the ids as its only column, which it calls as {@link Touched#key} does; not null
     * @param values what its question marks stand for
     */
    void add(Touched touched, String query, Object... values) {
        String key = touched.key();
        jdbc.update(
                "insert into " + touched.table() + " (" + key + ") select distinct x." + key + " from (" + query
                        + ") x where not exists (select 1 from " + touched.table() + " t where t." + key + " = x." + key
                        + ")",
                values);
    }

    /**
     * Removes the rows of the touched ids from a table. H2 would work out a subselect of them again for each row that it removes.
     *
     * @return whether any id is touched
     */
    boolean removeFrom(String table, Touched touched) {
        List<UUID> ids = jdbc.queryForList("select " + touched.key() + " from " + touched.table(), UUID.class);
        for (List<UUID> some : Batches.few(ids)) {
            jdbc.update(
                    "delete from " + table + " where " + touched.key() + " in (" + Batches.marks(some) + ")",
                    some.toArray());
        }
        return !ids.isEmpty();
    }

    void clear() {
        for (Touched touched : Touched.values()) {
            clear(touched);
        }
    }

    void clear(Touched touched) {
        jdbc.update("delete from " + touched.table());
    }
}
