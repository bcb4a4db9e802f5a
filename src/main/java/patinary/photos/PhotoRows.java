package patinary.photos;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rows of photos. */
@Repository
class PhotoRows {

    private static final String ALL = """
            select id, piece_id, document_id, stage, sort_order, width, height, bytes, sha256, taken_on, added_at, added_by,
                   taken_away_at
            from photo""";
    private static final String IN_ORDER = " order by sort_order, added_at, id";

    private final JdbcClient jdbc;

    PhotoRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Photo> find(UUID id) {
        return jdbc.sql(ALL + " where id = ?").param(id).query(PhotoRows::read).optional();
    }

    /** The photos of something in their order, without those that were taken away. */
    List<Photo> of(Subject subject) {
        return list(subject, " and taken_away_at is null");
    }

    /** The same with those that were taken away. */
    List<Photo> allOf(Subject subject) {
        return list(subject, "");
    }

    /** Those of them that were taken away and can be brought back. */
    List<Photo> awayOf(Subject subject) {
        return list(subject, " and taken_away_at is not null");
    }

    /** Photos that wait to be matched, the oldest first, so that those of one session stay together. */
    List<Photo> waiting(int most) {
        return jdbc.sql(ALL + " where piece_id is null and document_id is null and taken_away_at is null"
                        + " order by added_at, id fetch first ? rows only")
                .param(most)
                .query(PhotoRows::read)
                .list();
    }

    long countWaiting() {
        return jdbc.sql("select count(*) from photo"
                        + " where piece_id is null and document_id is null and taken_away_at is null")
                .query(Long.class)
                .single();
    }

    void insert(Photo photo) {
        jdbc.sql("""
                        insert into photo (id, piece_id, document_id, stage, sort_order, width, height, bytes, sha256,
                            taken_on, added_at, added_by, version)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 0)""")
                .params(Arrays.asList(
                        photo.id(),
                        id(photo.subject(), Subject.Kind.PIECE),
                        id(photo.subject(), Subject.Kind.DOCUMENT),
                        photo.stage().name(),
                        photo.order(),
                        photo.width(),
                        photo.height(),
                        photo.bytes(),
                        photo.sha256(),
                        photo.takenOn(),
                        utc(photo.addedAt()),
                        photo.addedBy()))
                .update();
    }

    void restage(UUID id, Stage stage) {
        jdbc.sql("update photo set stage = ?, version = version + 1 where id = ?")
                .params(stage.name(), id)
                .update();
    }

    void move(UUID id, Subject subject, Stage stage) {
        jdbc.sql("update photo set piece_id = ?, document_id = ?, stage = ?, version = version + 1 where id = ?")
                .params(Arrays.asList(
                        id(subject, Subject.Kind.PIECE), id(subject, Subject.Kind.DOCUMENT), stage.name(), id))
                .update();
    }

    void reorder(List<UUID> ids) {
        for (int i = 0; i < ids.size(); i++) {
            jdbc.sql("update photo set sort_order = ?, version = version + 1 where id = ? and sort_order <> ?")
                    .params(i + 1, ids.get(i), i + 1)
                    .update();
        }
    }

    void setAway(UUID id, @Nullable Instant at) {
        jdbc.sql("update photo set taken_away_at = ?, version = version + 1 where id = ?")
                .params(Arrays.asList(at == null ? null : utc(at), id))
                .update();
    }

    /** Forgets photos that were taken away before the given moment. */
    int forget(Instant before) {
        return jdbc.sql("delete from photo where taken_away_at < ?")
                .param(utc(before))
                .update();
    }

    boolean knows(String sha256) {
        return jdbc.sql("select count(*) from photo where sha256 = ?")
                        .param(sha256)
                        .query(Long.class)
                        .single()
                > 0;
    }

    List<Photo> all() {
        return jdbc.sql(ALL + " order by id").query(PhotoRows::read).list();
    }

    private List<Photo> list(Subject subject, String which) {
        String of = switch (subject.kind()) {
            case PIECE -> "piece_id = :of";
            case DOCUMENT -> "document_id = :of";
            case NONE -> "piece_id is null and document_id is null";
        };
        return jdbc.sql(ALL + " where " + of + which + IN_ORDER)
                .params(Map.of("of", subject.id()))
                .query(PhotoRows::read)
                .list();
    }

    private static Photo read(ResultSet row, int number) throws SQLException {
        OffsetDateTime away = row.getObject("taken_away_at", OffsetDateTime.class);
        return new Photo(
                row.getObject("id", UUID.class),
                subject(row),
                Stage.valueOf(row.getString("stage")),
                row.getInt("sort_order"),
                row.getInt("width"),
                row.getInt("height"),
                row.getInt("bytes"),
                row.getString("sha256"),
                row.getObject("taken_on", LocalDate.class),
                row.getObject("added_at", OffsetDateTime.class).toInstant(),
                row.getString("added_by"),
                away == null ? null : away.toInstant());
    }

    private static Subject subject(ResultSet row) throws SQLException {
        UUID piece = row.getObject("piece_id", UUID.class);
        if (piece != null) {
            return new Subject(Subject.Kind.PIECE, piece);
        }
        UUID document = row.getObject("document_id", UUID.class);
        return document == null ? Subject.NOTHING_YET : new Subject(Subject.Kind.DOCUMENT, document);
    }

    private static @Nullable UUID id(Subject subject, Subject.Kind kind) {
        return subject.kind() == kind ? subject.id() : null;
    }

    private static OffsetDateTime utc(Instant moment) {
        return moment.atOffset(ZoneOffset.UTC);
    }
}
