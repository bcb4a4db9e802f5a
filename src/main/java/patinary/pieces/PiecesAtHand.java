package patinary.pieces;

import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import patinary.lists.Where;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.Words;

/** The pieces still in her hands, not sold and not let go, for a form in which some are ticked. */
@Repository
@Transactional(readOnly = true)
public class PiecesAtHand {

    /** More are found by their words; so many can still be looked through. */
    static final int SHOWN = 48;

    /**
     * What a form offers.
     *
     * @param ticked those she ticked, by their codes
     * @param others those that changed last of those that fit her words, by their codes
     * @param more whether more fit than are shown
     */
    public record Offer(List<Row> ticked, List<Row> others, boolean more) {

        public boolean isEmpty() {
            return ticked.isEmpty() && others.isEmpty();
        }

        List<Choice> tickedFirst() {
            return Stream.concat(ticked.stream(), others.stream())
                    .map(row -> Choice.named(row.id().toString(), row.code() + " " + row.title()))
                    .toList();
        }
    }

    /** A piece to be ticked. */
    public record Row(UUID id, String code, String title) {}

    private static final String HERE = "select p.id, p.code, p.title, coalesce(s.since, date '9999-12-31') as since"
            + " from piece p join piece_state s on s.piece_id = p.id";

    private final JdbcClient jdbc;

    PiecesAtHand(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param receipt the one whose pieces are offered, or null for all; those ticked are shown whatever receipt they are of */
    public Offer offer(PiecePicks picks, @Nullable UUID receipt) {
        List<UUID> ids =
                picks.pieces.stream().flatMap(text -> Ids.read(text).stream()).toList();
        List<Row> ticked = ids.isEmpty() ? List.of() : rows(here().and("p.id in (:ids)", "ids", ids), ids.size());
        List<Row> others = rows(others(picks.pieceWords, ids, receipt), SHOWN + 1);
        boolean more = others.size() > SHOWN;
        return new Offer(byCode(ticked), byCode(more ? others.subList(0, SHOWN) : others), more);
    }

    private static Where here() {
        return new Where().and("s.state not in ('SOLD', 'GONE')");
    }

    private static Where others(String words, List<UUID> ids, @Nullable UUID receipt) {
        Where where = here().words(Words.in("p.code", "p.title"), words);
        if (!ids.isEmpty()) {
            where.and("p.id not in (:ids)", "ids", ids);
        }
        if (receipt != null) {
            where.and(
                    "exists (select 1 from receipt_piece r where r.piece_id = p.id and r.receipt_id = :receipt)",
                    "receipt",
                    receipt);
        }
        return where;
    }

    private List<Row> rows(Where where, int most) {
        return jdbc.sql(HERE + where.sql() + " order by since desc, p.code desc fetch first " + most + " rows only")
                .params(where.values())
                .query((row, number) ->
                        new Row(row.getObject("id", UUID.class), row.getString("code"), row.getString("title")))
                .list();
    }

    private static List<Row> byCode(List<Row> rows) {
        return rows.stream().sorted(Comparator.comparing(Row::code)).toList();
    }
}
