package patinary.photos;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.web.Choice;

/**
 * What templates of any feature ask to show photos: {@code th:with="pictures=${@pictures.of(ids)}"}, then for each row the
 * fragment {@code photos/parts :: thumb(${pictures.get(row.id)})}.
 */
@Component("pictures")
public class Pictures {

    /**
     * A photo to show.
     *
     * @param id its address is {@code /photos/{id}/small}, {@code /middle} or {@code /full}
     * @param title of the piece, for the words that stand for the picture
     * @param width in pixels, of the full size
     */
    public record Picture(UUID id, String title, Stage stage, int width, int height) {

        /** The width in one of the sizes: {@code small}, {@code middle}, {@code full}. */
        public int width(String size) {
            return Size.of(size).orElseThrow().scaled(width, height);
        }

        public int height(String size) {
            return Size.of(size).orElseThrow().scaled(height, width);
        }
    }

    private final JdbcClient jdbc;
    private final PhotoRows rows;
    private final Subjects subjects;

    Pictures(JdbcClient jdbc, PhotoRows rows, Subjects subjects) {
        this.jdbc = jdbc;
        this.rows = rows;
        this.subjects = subjects;
    }

    /** The picture of each piece that has one, asked for at once. */
    public Map<UUID, Picture> of(Collection<UUID> pieces) {
        Map<UUID, Picture> found = new HashMap<>();
        if (!pieces.isEmpty()) {
            jdbc.sql("select pp.piece_id, pp.photo_id, p.title, pp.stage, pp.width, pp.height from piece_photo pp"
                            + " join piece p on p.id = pp.piece_id where pp.piece_id in (:pieces)")
                    .param("pieces", pieces)
                    .query(row -> {
                        found.put(
                                row.getObject("piece_id", UUID.class),
                                new Picture(
                                        row.getObject("photo_id", UUID.class),
                                        row.getString("title"),
                                        Stage.valueOf(row.getString("stage")),
                                        row.getInt("width"),
                                        row.getInt("height")));
                    });
        }
        return found;
    }

    /** What stands for a piece without a picture: the first letters of the first two words of its title. */
    public String initials(@Nullable String title) {
        return title == null
                ? ""
                : Stream.of(title.strip().split("\\s+"))
                        .filter(word -> !word.isEmpty())
                        .limit(2)
                        .map(word -> Character.toString(word.codePointAt(0)))
                        .collect(Collectors.joining())
                        .toUpperCase(Locale.ROOT);
    }

    /**
     * All photos of a piece or a paper.
     *
     * @param named what they are of; null where it does not exist
     * @param shots in their order
     * @param away those of them that were taken away and can be brought back
     */
    public record Album(Subjects.@Nullable Named named, List<Picture> shots, List<Picture> away) {}

    /** What the page of a piece or a paper shows. */
    public Album album(UUID of) {
        Optional<Subjects.Named> found = subjects.find(of);
        if (found.isEmpty()) {
            return new Album(null, List.of(), List.of());
        }
        Subjects.Named named = found.get();
        Map<Boolean, List<Picture>> pictures = rows.allOf(named.subject()).stream()
                .collect(Collectors.partitioningBy(
                        Photo::isAway,
                        Collectors.mapping(photo -> picture(photo, named.title()), Collectors.toList())));
        return new Album(named, pictures.get(false), pictures.get(true));
    }

    /** What a photo of a piece may show, to choose from. */
    public List<Choice> stages() {
        return Stage.ofPiece();
    }

    /** An id for photos that a form is going to send. */
    public UUID newId() {
        return UUID.randomUUID();
    }

    /** How many photos wait to be matched. */
    public long waiting() {
        return rows.countWaiting();
    }

    static Picture picture(Photo photo, String title) {
        return new Picture(photo.id(), title, photo.stage(), photo.width(), photo.height());
    }
}
