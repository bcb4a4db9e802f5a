package patinary.pieces;

import java.util.List;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes pieces for the documents that bring them, each with the next free code. */
@Service
public class NewPieces {

    private static final Pattern OWN = Pattern.compile("P[0-9]{4,8}");

    private final Pieces pieces;
    private final JdbcTemplate jdbc;

    NewPieces(Pieces pieces, JdbcTemplate jdbc) {
        this.pieces = pieces;
        this.jdbc = jdbc;
    }

    /** A new piece with the next code; to be called inside the transaction that records its document. */
    @Transactional
    public UUID create(String title, @Nullable UUID kindId, @Nullable UUID styleId) {
        UUID id = UUID.randomUUID();
        pieces.saveAndFlush(
                new Piece(id, new Piece.Facts(nextCode(), title, kindId, styleId, "", null, "", "", List.of())));
        return id;
    }

    /** P and four digits; more where the shop has had ten thousand pieces. Her own codes of another form are left out. */
    String nextCode() {
        int last = jdbc.queryForList("select code from piece where code like 'P%'", String.class).stream()
                .filter(code -> OWN.matcher(code).matches())
                .mapToInt(code -> Integer.parseInt(code.substring(1)))
                .max()
                .orElse(0);
        return "P%04d".formatted(last + 1);
    }
}
