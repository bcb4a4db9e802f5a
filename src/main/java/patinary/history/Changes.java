package patinary.history;

import jakarta.persistence.EntityManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import patinary.exchange.Content;
import patinary.web.Page;
import patinary.web.Window;

/** The stored history. Rows are added and read; only {@link Erasure} changes words in them. */
@Repository
class Changes {

    /**
     * Which changes to read.
     *
     * @param day of which they were made, by the shop's clock; null for all
     * @param who by whom; empty for all
     * @param kind of what; empty for all
     */
    record Wanted(@Nullable Instant from, @Nullable Instant to, String who, String kind) {}

    private static final int AT_ONCE = 200;
    private static final String ADD = """
            insert into history (id, act_id, place, changed_at, who, came_by, file_name, kind, subject_id, doc_date, step_on, undoes,
                content_before, content_after) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""";
    private static final String LATEST_FIRST = " order by changed_at desc, act_id, place";

    private final JdbcTemplate template;
    private final JdbcClient jdbc;
    private final EntityManager entities;

    Changes(JdbcTemplate template, EntityManager entities) {
        this.template = template;
        this.jdbc = JdbcClient.create(template);
        this.entities = entities;
    }

    /** Brings what entities hold into the database, where it can be read. */
    void flush() {
        entities.flush();
    }

    /** Lets go of all entities: what is written past them is read anew. */
    void forget() {
        entities.flush();
        entities.clear();
    }

    /** The moment of the latest change; nothing where there is none. */
    Optional<Instant> latest() {
        return jdbc.sql("select changed_at from history order by changed_at desc fetch first 1 row only")
                .query((row, number) ->
                        row.getObject("changed_at", OffsetDateTime.class).toInstant())
                .optional();
    }

    void add(List<Change> several) {
        template.batchUpdate(ADD, several, AT_ONCE, (statement, change) -> {
            int at = 0;
            for (Object value : cells(change)) {
                statement.setObject(++at, value);
            }
        });
    }

    private static List<@Nullable Object> cells(Change change) {
        return java.util.Arrays.asList(
                change.id(),
                change.act(),
                change.place(),
                change.at().atOffset(ZoneOffset.UTC),
                change.who(),
                change.cameBy().name(),
                change.file(),
                change.kind(),
                change.subject(),
                change.day(),
                change.stepOn(),
                change.undoes(),
                text(change.before()),
                text(change.after()));
    }

    private static @Nullable String text(@Nullable Content content) {
        return content == null ? null : content.text();
    }

    /** What an act changed, in order. */
    List<Change> of(UUID act) {
        return jdbc.sql("select * from history where act_id = ? order by place")
                .param(act)
                .query(Changes::change)
                .list();
    }

    /** The latest changes of a subject. */
    List<Change> of(Subject subject, int most) {
        return jdbc.sql("select * from history where subject_id = ? and kind = ?" + LATEST_FIRST
                        + " fetch first ? rows only")
                .params(subject.id(), subject.kind(), most)
                .query(Changes::change)
                .list();
    }

    Page<Change> page(Wanted wanted, Window window) {
        String where = """
                 from history where (cast(:from as timestamp with time zone) is null or changed_at >= :from)
                    and (cast(:to as timestamp with time zone) is null or changed_at < :to)
                    and (:who = '' or who = :who) and (:kind = '' or kind = :kind)""";
        long total = wanted(wanted, "select count(*)" + where).query(Long.class).single();
        List<Change> rows = wanted(
                        wanted, "select *" + where + LATEST_FIRST + " offset :offset rows fetch first :size rows only")
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Changes::change)
                .list();
        return Page.of(window, rows, total);
    }

    private JdbcClient.StatementSpec wanted(Wanted wanted, String sql) {
        return jdbc.sql(sql)
                .param("from", moment(wanted.from()), java.sql.Types.TIMESTAMP_WITH_TIMEZONE)
                .param("to", moment(wanted.to()), java.sql.Types.TIMESTAMP_WITH_TIMEZONE)
                .param("who", wanted.who())
                .param("kind", wanted.kind());
    }

    private static @Nullable OffsetDateTime moment(@Nullable Instant instant) {
        return instant == null ? null : instant.atOffset(ZoneOffset.UTC);
    }

    /** Everybody who changed something. */
    List<String> people() {
        return jdbc.sql("select distinct who from history where who <> '' order by who")
                .query(String.class)
                .list();
    }

    /** Every kind of thing that was changed. */
    List<String> kinds() {
        return jdbc.sql("select distinct kind from history order by kind")
                .query(String.class)
                .list();
    }

    /** The last day of the latest sealed year. */
    Optional<LocalDate> sealedUpTo() {
        return jdbc.sql("select d.doc_date from year_seal s join document d on d.id = s.id order by d.doc_date desc"
                        + " fetch first 1 rows only")
                .query(LocalDate.class)
                .optional();
    }

    /** The latest sealed year. */
    Optional<Integer> sealedYear() {
        return jdbc.sql("select tax_year from year_seal order by tax_year desc fetch first 1 rows only")
                .query(Integer.class)
                .optional();
    }

    private static Change change(ResultSet row, int number) throws SQLException {
        return new Change(
                row.getObject("id", UUID.class),
                row.getObject("act_id", UUID.class),
                row.getInt("place"),
                row.getObject("changed_at", OffsetDateTime.class).toInstant(),
                row.getString("who"),
                CameBy.valueOf(row.getString("came_by")),
                row.getString("file_name"),
                row.getString("kind"),
                row.getObject("subject_id", UUID.class),
                row.getObject("doc_date", LocalDate.class),
                row.getObject("step_on", LocalDate.class),
                row.getObject("undoes", UUID.class),
                content(row.getString("content_before")),
                content(row.getString("content_after")));
    }

    private static @Nullable Content content(@Nullable String text) {
        return text == null ? null : Content.of(text);
    }
}
