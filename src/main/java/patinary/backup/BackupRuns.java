package patinary.backup;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.web.Window;

/** What was backed up and rehearsed, and how it went. */
@Repository
class BackupRuns {

    private static final int LONGEST = 4000;
    private static final String ALL =
            "select id, what, started_at, ended_at, good, file, bytes, changes, told from backup_run";
    private static final String LATEST = " order by started_at desc, id fetch first 1 rows only";

    private final JdbcClient jdbc;

    BackupRuns(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void store(BackupRun run) {
        String told = run.told().length() > LONGEST ? run.told().substring(0, LONGEST) : run.told();
        jdbc.sql("insert into backup_run (id, what, started_at, ended_at, good, file, bytes, changes, told)"
                        + " values (?, ?, ?, ?, ?, ?, ?, ?, ?)")
                .params(
                        run.id(),
                        run.what().name(),
                        run.startedAt().atOffset(ZoneOffset.UTC),
                        run.endedAt().atOffset(ZoneOffset.UTC),
                        run.good(),
                        run.file(),
                        run.bytes(),
                        run.changes(),
                        told)
                .update();
    }

    /** The last backup, good or not; one that was taken to a device is not counted. */
    Optional<BackupRun> last() {
        return first(" where what = 'BACKUP'");
    }

    /** The last good one, wherever it went. */
    Optional<BackupRun> lastGood() {
        return first(" where what in ('BACKUP', 'TAKEN') and good");
    }

    Optional<BackupRun> lastRehearsal() {
        return first(" where what = 'REHEARSAL'");
    }

    List<BackupRun> list(Window window) {
        return jdbc.sql(ALL + " order by started_at desc, id offset ? rows fetch next ? rows only")
                .params(window.offset(), window.size())
                .query(BackupRuns::read)
                .list();
    }

    long count() {
        return jdbc.sql("select count(*) from backup_run").query(Long.class).single();
    }

    /** Forgets what is older. */
    void forget(Instant before) {
        jdbc.sql("delete from backup_run where started_at < ?")
                .param(before.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** How often the books have been changed. */
    long changes() {
        return jdbc.sql("select changes from books").query(Long.class).single();
    }

    private Optional<BackupRun> first(String which) {
        return jdbc.sql(ALL + which + LATEST).query(BackupRuns::read).optional();
    }

    private static BackupRun read(ResultSet row, int number) throws SQLException {
        return new BackupRun(
                row.getObject("id", UUID.class),
                BackupRun.What.valueOf(row.getString("what")),
                row.getObject("started_at", OffsetDateTime.class).toInstant(),
                row.getObject("ended_at", OffsetDateTime.class).toInstant(),
                row.getBoolean("good"),
                row.getString("file"),
                row.getObject("bytes", Long.class),
                row.getObject("changes", Long.class),
                row.getString("told"));
    }
}
