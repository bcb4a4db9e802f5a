package patinary.places;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.web.Page;
import patinary.web.Window;

/**
 * Shelves, boxes and stalls. A place is the word that stands with its pieces and nothing else: it is there from the
 * first piece put there until the last one leaves; docs/decisions/0011-places-and-packing.md.
 */
@Service
public class Places {

    /** As long as the name of a place may be. */
    public static final int NAME = 60;

    /** A place and how many pieces in her hands are there. */
    public record Place(String name, long pieces) {}

    private static final String HERE = "s.state not in ('SOLD', 'GONE')";

    private final JdbcClient jdbc;

    Places(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every place where there is a piece. */
    @Transactional(readOnly = true)
    public List<Place> all() {
        return jdbc.sql("""
                        select p.place as name, count(*) as pieces
                        from piece p join piece_state s on s.piece_id = p.id
                        where p.place <> '' and %s group by p.place order by lower(p.place), p.place""".formatted(HERE)).query(Place.class).list();
    }

    /** What is in a place; the empty name stands for the pieces whose place is not said. */
    @Transactional(readOnly = true)
    public Page<PlacedPiece> in(String place, Window window) {
        String where = " where p.place = :place and " + HERE;
        long total = jdbc.sql("select count(*) from piece p join piece_state s on s.piece_id = p.id" + where)
                .param("place", place)
                .query(Long.class)
                .single();
        List<PlacedPiece> rows = jdbc.sql(
                        PieceCodes.SELECT + where + " order by p.code offset :offset rows fetch next :size rows only")
                .param("place", place)
                .param("offset", window.offset())
                .param("size", window.size())
                .query(PlacedPiece.class)
                .list();
        return Page.of(window, rows, total);
    }

    /**
     * Puts pieces into a place. A name that differs from a known place's only by capitals is taken for that place.
     *
     * @return how many pieces there were
     */
    @Transactional
    public int move(Collection<UUID> pieces, String place) {
        if (pieces.isEmpty()) {
            return 0;
        }
        return jdbc.sql("update piece set place = :place, version = version + 1 where id in (:pieces)")
                .param("place", known(place).orElse(place))
                .param("pieces", pieces)
                .update();
    }

    /** Calls a place by another name; where there is one of that name already, the two become one. */
    @Transactional
    public int rename(String from, String to) {
        String name = known(to).filter(known -> !known.equals(from)).orElse(to);
        return jdbc.sql("update piece set place = ?, version = version + 1 where place = ?")
                .params(name, from)
                .update();
    }

    private Optional<String> known(String place) {
        return jdbc.sql("select place from piece where lower(place) = lower(?) order by place fetch first 1 row only")
                .param(place)
                .query(String.class)
                .optional();
    }
}
