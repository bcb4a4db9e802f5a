package patinary.finishes;

import java.sql.Types;
import java.util.UUID;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Trail;

/** Keeps finishes: new ones, changes, removals. */
@Service
@Transactional
class FinishKeeping {

    private static final String TABLE = "finish";

    private final JdbcClient jdbc;
    private final Trail trail;

    FinishKeeping(JdbcClient jdbc, Trail trail) {
        this.jdbc = jdbc;
        this.trail = trail;
    }

    /** @return whether it is new; a form that is sent twice is one finish */
    boolean add(UUID id, Finish finish) {
        boolean known = jdbc.sql("select count(*) from finish where id = ?")
                        .param(id)
                        .query(Long.class)
                        .single()
                > 0;
        if (!known) {
            trail.thing(TABLE, id);
            jdbc.sql("insert into finish (id, name, note, removed, version) values (?, ?, ?, false, 0)")
                    .params(id, finish.name(), finish.note())
                    .update();
            lines(id, finish);
        }
        return !known;
    }

    /** @throws OptimisticLockingFailureException where it was changed, or removed, since the form was drawn */
    void change(UUID id, long version, Finish finish) {
        trail.thing(TABLE, id);
        int changed = jdbc.sql(
                        "update finish set name = ?, note = ?, version = version + 1 where id = ? and version = ? and not removed")
                .params(finish.name(), finish.note(), id, version)
                .update();
        if (changed != 1) {
            throw new OptimisticLockingFailureException("Finish " + id + " is stale");
        }
        jdbc.sql("delete from finish_supply where finish_id = ?").param(id).update();
        jdbc.sql("delete from finish_step where finish_id = ?").param(id).update();
        lines(id, finish);
    }

    /** It is offered no more and planned for no piece; entries that followed it keep its name. */
    void remove(UUID id) {
        trail.thing(TABLE, id);
        jdbc.sql("select id from piece where planned_finish_id = ?")
                .param(id)
                .query(UUID.class)
                .list()
                .forEach(piece -> trail.thing("piece", piece));
        jdbc.sql("update finish set removed = true, version = version + 1 where id = ?")
                .param(id)
                .update();
        jdbc.sql("update piece set planned_finish_id = null, version = version + 1 where planned_finish_id = ?")
                .param(id)
                .update();
    }

    private void lines(UUID id, Finish finish) {
        finish.steps().forEach(step -> step(id, step));
        finish.needs().forEach(need -> need(id, need));
    }

    private void step(UUID id, Finish.Step step) {
        Finish.Wait wait = step.pause();
        jdbc.sql("""
                        insert into finish_step (finish_id, line, what, minutes, wait_from, wait_to, wait_words, cautions)
                        values (:finish, :line, :what, :minutes, :from, :to, :words, :cautions)
                        """)
                .param("finish", id)
                .param("line", step.line())
                .param("what", step.what())
                .param("minutes", step.minutes())
                .param("from", wait == null ? null : wait.from(), Types.INTEGER)
                .param("to", wait == null ? null : wait.to(), Types.INTEGER)
                .param("words", wait == null ? "" : wait.words())
                .param("cautions", String.join(" ", step.cautions()))
                .update();
    }

    private void need(UUID id, Finish.Need need) {
        jdbc.sql("""
                        insert into finish_supply (finish_id, line, step, supply_id, typed, quantity, per_cm2)
                        values (:finish, :line, :step, :supply, :typed, :quantity, :per)
                        """)
                .param("finish", id)
                .param("line", need.line())
                .param("step", need.step())
                .param("supply", need.supplyId())
                .param("typed", need.typed())
                .param("quantity", need.coverage().quantity())
                .param("per", need.coverage().perArea(), Types.NUMERIC)
                .update();
    }
}
