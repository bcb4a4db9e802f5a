package patinary.insight;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.Readings;
import patinary.web.Page;
import patinary.web.Window;

/** The pieces that advice by kind and style rests on, each with what became of it. */
@Repository
@Transactional(readOnly = true)
class PieceOutcomes {

    private static final String PIECES = """
            select o.piece_id, p.code, p.title, o.clock_from, o.sold_on, o.net_minor, o.bought_minor, o.supplies_minor,
                   cast(round(o.minutes, 0) as bigint) as minutes, count(*) over () as total
            from piece_outcome o
            left join piece p on p.id = o.piece_id
            where (:anyKind or o.kind_id = cast(:kind as uuid) or o.kind_id is null and cast(:kind as uuid) is null)
              and (:anyStyle or o.style_id = cast(:style as uuid) or o.style_id is null and cast(:style as uuid) is null)
              and (:whole or o.piece_id in (:pieces))
            order by o.sold_on desc nulls last, p.code
            offset :offset rows fetch next :size rows only""";

    /** What pieces are brought together by. */
    enum Level {
        /** Kind and style, where a group without one of them is that of the pieces that have none. */
        BOTH,
        KIND,
        STYLE,
        /** Kind, style or both, as far as the group has them. */
        ANY;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<Level> of(String word) {
            return Stream.of(BOTH, KIND, STYLE)
                    .filter(level -> level.word().equals(word))
                    .findFirst();
        }

        /** The group of a piece, on this level. */
        PayRow.Group of(PayRow.Group group) {
            return this == KIND ? group.kindOnly() : this == STYLE ? group.styleOnly() : group;
        }

        private boolean anyKind(PayRow.Group group) {
            return this == STYLE || this == ANY && group.kindId() == null;
        }

        private boolean anyStyle(PayRow.Group group) {
            return this == KIND || this == ANY && group.styleId() == null;
        }
    }

    /** A piece with what became of it; amounts in minor units. */
    record Piece(
            UUID pieceId,
            String code,
            String title,
            @Nullable LocalDate clockFrom,
            @Nullable LocalDate soldOn,
            @Nullable Long netMinor,
            long boughtMinor,
            long suppliesMinor,
            long minutes,
            long total) {}

    private record Asking(PayRow.Group group, Level level, List<Only> chosen, Window window) {}

    private final JdbcClient jdbc;
    private final Readings readings;

    PieceOutcomes(JdbcClient jdbc, Readings readings) {
        this.jdbc = jdbc;
        this.readings = readings;
    }

    Page<Piece> of(PayRow.Group group, Level level, Narrowing narrowing, Window window) {
        return readings.of(
                new Asking(group, level, narrowing.chosen(), window), () -> read(group, level, narrowing, window));
    }

    private Page<Piece> read(PayRow.Group group, Level level, Narrowing narrowing, Window window) {
        List<Piece> rows = jdbc.sql(PIECES)
                .param("kind", group.kindId())
                .param("style", group.styleId())
                .param("anyKind", level.anyKind(group))
                .param("anyStyle", level.anyStyle(group))
                .param("whole", narrowing.isWhole())
                .param("pieces", narrowing.ids())
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Piece.class)
                .list();
        return Page.of(window, rows, rows.isEmpty() ? 0 : rows.get(0).total());
    }
}
