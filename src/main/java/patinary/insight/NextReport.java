package patinary.insight;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.shop.Aims;
import patinary.shop.CurrentAims;
import patinary.shop.CurrentShop;
import patinary.web.Page;
import patinary.web.Window;

/** Reads what to make next, and the pieces that each suggestion rests on. */
@Repository
@Transactional(readOnly = true)
class NextReport {

    private static final String PIECES = """
            select o.piece_id, p.code, p.title, o.clock_from, o.sold_on, o.net_minor, o.bought_minor, o.supplies_minor,
                   cast(round(o.minutes, 0) as bigint) as minutes, count(*) over () as total
            from piece_outcome o
            left join piece p on p.id = o.piece_id
            where (o.kind_id = cast(:kind as uuid) or o.kind_id is null and cast(:kind as uuid) is null)
              and (o.style_id = cast(:style as uuid) or o.style_id is null and cast(:style as uuid) is null)
            order by o.sold_on desc nulls last, p.code
            offset :offset rows fetch next :size rows only""";

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

    private final JdbcClient jdbc;
    private final Outcomes outcomes;
    private final CurrentAims aims;
    private final CurrentShop shop;

    NextReport(JdbcClient jdbc, Outcomes outcomes, CurrentAims aims, CurrentShop shop) {
        this.jdbc = jdbc;
        this.outcomes = outcomes;
        this.aims = aims;
        this.shop = shop;
    }

    List<NextRow> rows(MakeNext.Order order) {
        Aims now = aims.get();
        return MakeNext.rows(outcomes.cells(shop.today(), now.horizonDays()), now, order);
    }

    Map<PayRow.Group, Readiness> ready(List<NextRow> rows) {
        List<Readiness.Need> needs = jdbc.sql(
                        "select finish_id, finish, kind_id, style_id, pieces, supply, needed, on_bench from finish_of_kind")
                .query(Readiness.Need.class)
                .list();
        return Readiness.of(needs, rows.stream().map(NextRow::group).toList());
    }

    Page<Piece> pieces(PayRow.Group group, Window window) {
        List<Piece> rows = jdbc.sql(PIECES)
                .param("kind", group.kindId())
                .param("style", group.styleId())
                .param("offset", window.offset())
                .param("size", window.size())
                .query(Piece.class)
                .list();
        return Page.of(window, rows, rows.isEmpty() ? 0 : rows.get(0).total());
    }
}
