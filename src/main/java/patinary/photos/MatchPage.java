package patinary.photos;

import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Words;

/** What the page shows on which waiting photos are given to pieces. */
@Component
class MatchPage {

    /** A piece to choose. */
    record Target(UUID id, String code, String title) {}

    /** A photo that waits. */
    record Waiting(int number, Pictures.Picture picture) {}

    private static final int SHOWN = 60;
    private static final int PIECES = 24;

    private final PhotoRows rows;
    private final JdbcClient jdbc;

    MatchPage(PhotoRows rows, JdbcClient jdbc) {
        this.rows = rows;
        this.jdbc = jdbc;
    }

    String page(MatchForm form, Model model) {
        List<Photo> photos = rows.waiting(SHOWN);
        List<Target> pieces = pieces(form.q);
        model.addAttribute("match", form);
        model.addAttribute(
                "waiting",
                IntStream.range(0, photos.size())
                        .mapToObj(i -> new Waiting(i + 1, Pictures.picture(photos.get(i), "")))
                        .toList());
        model.addAttribute("total", rows.countWaiting());
        model.addAttribute(
                "away",
                rows.awayOf(Subject.NOTHING_YET).stream()
                        .map(photo -> Pictures.picture(photo, ""))
                        .toList());
        model.addAttribute("pieces", pieces);
        model.addAttribute("pieceIds", pieces.stream().map(Target::id).toList());
        model.addAttribute("stages", Stage.ofPiece());
        return "photos/match";
    }

    /** Pieces by words in code or title; without words those to which something happened last. */
    private List<Target> pieces(String words) {
        return jdbc.sql("select p.id, p.code, p.title from piece p join piece_state s on s.piece_id = p.id"
                        + " where " + Words.in("p.code", "p.title")
                        + " order by case when s.state in ('SOLD', 'GONE') then 1 else 0 end,"
                        + " coalesce(s.since, date '0001-01-01') desc, p.code desc fetch first :most rows only")
                .param("words", Words.anywhere(words))
                .param("most", PIECES)
                .query(Target.class)
                .list();
    }
}
