package patinary.photos;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What photos can be of: asks the tables of pieces and documents by their ids. */
@Component
class Subjects {

    /**
     * What a page says of it.
     *
     * @param title a piece's title or the kind of a document
     * @param code a piece's code, or empty
     * @param path its own page
     * @param usual the stage that a new photo of it probably shows
     */
    record Named(Subject subject, String title, String code, String path, Stage usual) {

        public boolean isPiece() {
            return subject.kind() == Subject.Kind.PIECE;
        }

        public UUID id() {
            return subject.id();
        }
    }

    private final JdbcClient jdbc;

    Subjects(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The piece or the document with this id. */
    Optional<Named> find(UUID id) {
        return jdbc
                .sql("""
                        select p.title, p.code, s.state, null as kind
                        from piece p join piece_state s on s.piece_id = p.id where p.id = :id
                        union all
                        select null, null, null, d.kind from document d where d.id = :id""")
                .param("id", id)
                .query((row, number) -> row.getString("kind") == null ? piece(id, row) : document(id, row))
                .list()
                .stream()
                .findFirst();
    }

    private static Named piece(UUID id, ResultSet row) throws SQLException {
        return new Named(
                new Subject(Subject.Kind.PIECE, id),
                row.getString("title"),
                row.getString("code"),
                "/pieces/" + id,
                stage(row.getString("state")));
    }

    private static Named document(UUID id, ResultSet row) throws SQLException {
        return new Named(
                new Subject(Subject.Kind.DOCUMENT, id),
                "",
                "",
                row.getString("kind").equals("RECEIPT") ? "/receipts/" + id : "/photos/new?of=" + id,
                Stage.RECEIPT);
    }

    private static Stage stage(String state) {
        return switch (state) {
            case "FOUND" -> Stage.BEFORE;
            case "BENCH" -> Stage.DURING;
            default -> Stage.AFTER;
        };
    }
}
