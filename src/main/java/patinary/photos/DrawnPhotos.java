package patinary.photos;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Gives the pieces of the invented shop drawn pictures, which show no real thing. */
@Component
public class DrawnPhotos {

    /** Stands where the name of the person who added a photo would stand. */
    static final String BY = "Drawn for the invented shop";

    /** What a drawing shows; the same for all pieces of a kind and a look. */
    private record Motif(String kind, String style, boolean finished) {

        ReadyPhoto draw() {
            return ReadyPhoto.of(DrawnPiece.draw(kind, style, finished), null);
        }
    }

    private record Row(UUID id, String kind, String style, String state) {

        Motif before() {
            return new Motif(kind, "", false);
        }

        Motif after() {
            return new Motif(kind, style, true);
        }

        boolean isFinished() {
            return !state.equals("FOUND") && !state.equals("BENCH");
        }
    }

    private final JdbcClient jdbc;
    private final Photos photos;

    DrawnPhotos(JdbcClient jdbc, Photos photos) {
        this.jdbc = jdbc;
        this.photos = photos;
    }

    /** Every piece as it was found, and every finished one finished. */
    public void hang() {
        List<Row> pieces = jdbc.sql("select p.id, coalesce(k.name, '') as kind, coalesce(y.name, '') as style, s.state"
                        + " from piece p join piece_state s on s.piece_id = p.id"
                        + " left join object_kind k on k.id = p.kind_id left join style y on y.id = p.style_id"
                        + " order by p.code")
                .query(Row.class)
                .list();
        Map<Motif, ReadyPhoto> drawn = draw(pieces);
        for (Row piece : pieces) {
            hang(piece, Stage.BEFORE, drawn.get(piece.before()));
            if (piece.isFinished()) {
                hang(piece, Stage.AFTER, drawn.get(piece.after()));
            }
        }
    }

    private static Map<Motif, ReadyPhoto> draw(List<Row> pieces) {
        Map<Motif, Boolean> wanted = new LinkedHashMap<>();
        for (Row piece : pieces) {
            wanted.put(piece.before(), true);
            if (piece.isFinished()) {
                wanted.put(piece.after(), true);
            }
        }
        Map<Motif, ReadyPhoto> drawn = new ConcurrentHashMap<>();
        wanted.keySet().parallelStream().forEach(motif -> drawn.put(motif, motif.draw()));
        return drawn;
    }

    private void hang(Row piece, Stage stage, ReadyPhoto drawing) {
        UUID id = UUID.nameUUIDFromBytes((piece.id() + " " + stage).getBytes(StandardCharsets.US_ASCII));
        photos.add(new Photos.Wanted(id, new Subject(Subject.Kind.PIECE, piece.id()), stage, BY), drawing);
    }
}
