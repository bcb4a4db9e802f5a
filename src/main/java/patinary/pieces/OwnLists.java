package patinary.pieces;

import java.math.BigDecimal;
import java.sql.Types;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;
import patinary.web.Choice;

/** Keeps her lists of styles and kinds: names that are hers to add, rename and, while no piece has them, take out. */
@Service
@Transactional
class OwnLists {

    /**
     * One name and how many pieces have it.
     *
     * @param area of a kind, the usual surface in square centimetres
     */
    record Row(UUID id, String name, long version, @Nullable BigDecimal area, long pieces) {}

    private final JdbcClient jdbc;
    private final Trail trail;

    OwnLists(JdbcClient jdbc, Trail trail) {
        this.jdbc = jdbc;
        this.trail = trail;
    }

    @Transactional(readOnly = true)
    public List<Row> rows(OwnList list) {
        return jdbc.sql(select(list) + " order by lower(l.name), l.id")
                .query(Row.class)
                .list();
    }

    @Transactional(readOnly = true)
    public List<Choice> choices(OwnList list) {
        return jdbc.sql("select id, name from " + list.table() + " order by lower(name), id")
                .query((row, number) ->
                        Choice.named(row.getObject("id", UUID.class).toString(), row.getString("name")))
                .list();
    }

    @Transactional(readOnly = true)
    public Optional<Row> find(OwnList list, UUID id) {
        return jdbc.sql(select(list) + " where l.id = ?")
                .param(id)
                .query(Row.class)
                .optional();
    }

    @Transactional(readOnly = true)
    public Optional<UUID> called(OwnList list, String name) {
        return jdbc.sql("select id from " + list.table() + " where lower(name) = lower(?)")
                .param(name)
                .query(UUID.class)
                .optional();
    }

    /**
     * The id of the name, which is added where the list does not have it yet. A name that comes with a piece leaves no trace of its own:
     * taking the piece back must not be refused because another piece has the name by then.
     */
    public UUID add(OwnList list, String name) {
        return called(list, name).orElseGet(() -> insert(list, UUID.randomUUID(), name));
    }

    /** Adds a name by itself, where the list does not have it yet. */
    public void addAlone(OwnList list, String name) {
        if (called(list, name).isEmpty()) {
            UUID id = UUID.randomUUID();
            trail.thing(list.table(), id);
            insert(list, id, name);
        }
    }

    private UUID insert(OwnList list, UUID id, String name) {
        jdbc.sql("insert into " + list.table() + " (id, name, version) values (?, ?, 0)")
                .params(id, name)
                .update();
        return id;
    }

    /** @throws OptimisticLockingFailureException where it was renamed meanwhile */
    public void change(OwnList list, UUID id, long version, String name, @Nullable BigDecimal area) {
        trail.thing(list.table(), id);
        String usual = list.hasAreas() ? ", area_cm2 = :area" : "";
        int changed = jdbc.sql("update " + list.table() + " set name = :name" + usual
                        + ", version = version + 1 where id = :id and version = :version")
                .param("name", name)
                .param("area", area, Types.NUMERIC)
                .param("id", id)
                .param("version", version)
                .update();
        if (changed != 1) {
            throw new OptimisticLockingFailureException(list + " " + id + " is stale");
        }
    }

    /** @return whether it is gone; a name that a piece has stays */
    public boolean remove(OwnList list, UUID id) {
        trail.thing(list.table(), id);
        return jdbc.sql("delete from " + list.table() + " where id = ? and not exists (select 1 from piece p where p."
                                + list.column() + " = ?)")
                        .params(id, id)
                        .update()
                == 1;
    }

    private static String select(OwnList list) {
        return "select l.id, l.name, l.version, " + (list.hasAreas() ? "l.area_cm2" : "cast(null as numeric(30, 14))")
                + " as area, (select count(*) from piece p where p." + list.column()
                + " = l.id) as pieces from " + list.table() + " l";
    }
}
