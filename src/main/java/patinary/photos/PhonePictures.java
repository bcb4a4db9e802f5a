package patinary.photos;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.phone.PhoneList;

/** Which picture shows which piece, for a phone: the addresses only. The pictures are asked for when they come in sight. */
@Component
class PhonePictures implements PhoneList {

    /** More than the lists of pieces that a phone keeps; a shop of thousands must still fit into it. */
    private static final int PIECES = 400;

    /**
     * A piece with a picture.
     *
     * @param value the piece
     * @param photo its photo
     */
    record Row(UUID value, UUID photo) {}

    private final JdbcClient jdbc;

    PhonePictures(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "pictures";
    }

    /** Of what can be worked on or sold, the latest first. */
    @Override
    public List<Row> rows() {
        return jdbc.sql("""
                        select pp.piece_id as "value", pp.photo_id as photo
                        from piece_photo pp
                        join piece p on p.id = pp.piece_id
                        join piece_state s on s.piece_id = pp.piece_id
                        where s.state in ('FOUND', 'BENCH', 'READY', 'OFFERED')
                        order by coalesce(s.since, date '1970-01-01') desc, p.code desc
                        fetch first :most rows only
                        """).param("most", PIECES).query(Row.class).list();
    }
}
