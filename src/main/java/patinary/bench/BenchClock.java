package patinary.bench;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Keeps each person's clock and waits, so that they outlive the page, the phone and the day. */
@Repository
@Transactional
class BenchClock {

    /** A clock and the pieces it was started for. */
    record State(BenchTimer timer, List<UUID> pieces) {}

    private static final Duration DONE_IS_KEPT = Duration.ofDays(7);

    private final JdbcClient jdbc;

    BenchClock(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Transactional(readOnly = true)
    State of(String person) {
        List<UUID> pieces = new ArrayList<>();
        List<BenchTimer> timers = new ArrayList<>();
        jdbc.sql("""
                        select t.started_at, t.running_since, t.worked_seconds, t.changed_at, tp.piece_id
                        from bench_timer t
                        join person p on p.id = t.person_id
                        left join bench_timer_piece tp on tp.person_id = t.person_id
                        where p.name = :name
                        order by tp.piece_id
                        """).param("name", person).query(row -> {
            timers.add(timer(row));
            Optional.ofNullable(row.getObject("piece_id", UUID.class)).ifPresent(pieces::add);
        });
        return new State(timers.isEmpty() ? BenchTimer.off(Instant.EPOCH) : timers.get(0), pieces);
    }

    /** Keeps a state unless a later one is kept already. */
    void keep(String person, BenchTimer timer, Collection<UUID> pieces) {
        UUID id = lock(person);
        if (of(person).timer().changed().isAfter(timer.changed())) {
            return;
        }
        jdbc.sql("delete from bench_timer where person_id = ?").param(id).update();
        jdbc.sql("""
                        insert into bench_timer (person_id, started_at, running_since, worked_seconds, changed_at)
                        values (:person, :started, :since, :worked, :changed)
                        """)
                .param("person", id)
                .param("started", at(timer.started()))
                .param("since", at(timer.since()))
                .param("worked", timer.worked())
                .param("changed", at(timer.changed()))
                .update();
        if (!pieces.isEmpty()) {
            jdbc.sql("""
                            insert into bench_timer_piece (person_id, piece_id)
                            select cast(:person as uuid), id from piece where id in (:pieces)
                            """).param("person", id).param("pieces", pieces).update();
        }
    }

    /** What is waited for, the next one first. */
    @Transactional(readOnly = true)
    List<BenchWait> waits(String person) {
        return jdbc.sql("""
                        select w.id, w.words, w.due_at, w.done
                        from bench_wait w join person p on p.id = w.person_id
                        where p.name = :name and not w.done order by w.due_at, w.words
                        """).param("name", person).query(BenchClock::waiting).list();
    }

    /** Adds what is not known yet and ticks off what is done. */
    void keep(String person, Collection<BenchWait> waits, Instant now) {
        UUID id = lock(person);
        for (BenchWait wait : waits) {
            int known = jdbc.sql("update bench_wait set done = (done or :done) where id = :id and person_id = :person")
                    .param("done", wait.done())
                    .param("id", wait.id())
                    .param("person", id)
                    .update();
            if (known == 0 && !isTaken(wait.id())) {
                insert(id, wait);
            }
        }
        jdbc.sql("delete from bench_wait where person_id = :person and done and due_at < :before")
                .param("person", id)
                .param("before", at(now.minus(DONE_IS_KEPT)))
                .update();
    }

    private void insert(UUID person, BenchWait wait) {
        jdbc.sql("""
                        insert into bench_wait (id, person_id, words, due_at, done)
                        values (:id, :person, :words, :due, :done)
                        """)
                .param("id", wait.id())
                .param("person", person)
                .param("words", wait.words())
                .param("due", at(wait.due()))
                .param("done", wait.done())
                .update();
    }

    private boolean isTaken(UUID id) {
        return jdbc.sql("select count(*) from bench_wait where id = ?")
                        .param(id)
                        .query(Long.class)
                        .single()
                > 0;
    }

    /** Two devices of one person take turns. */
    private UUID lock(String person) {
        return jdbc.sql("select id from person where name = ? for update")
                .param(person)
                .query(UUID.class)
                .single();
    }

    private static BenchTimer timer(ResultSet row) throws SQLException {
        Instant changed = row.getObject("changed_at", OffsetDateTime.class).toInstant();
        return new BenchTimer(
                instant(row, "started_at"), instant(row, "running_since"), row.getLong("worked_seconds"), changed);
    }

    private static BenchWait waiting(ResultSet row, int number) throws SQLException {
        Instant due = row.getObject("due_at", OffsetDateTime.class).toInstant();
        return new BenchWait(row.getObject("id", UUID.class), row.getString("words"), due, row.getBoolean("done"));
    }

    private static @Nullable Instant instant(ResultSet row, String column) throws SQLException {
        OffsetDateTime moment = row.getObject(column, OffsetDateTime.class);
        return moment == null ? null : moment.toInstant();
    }

    private static @Nullable OffsetDateTime at(@Nullable Instant instant) {
        return instant == null ? null : instant.atOffset(ZoneOffset.UTC);
    }
}
