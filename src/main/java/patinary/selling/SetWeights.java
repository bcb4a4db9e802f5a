package patinary.selling;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** What the price of a set can be shared by, put into the form as weights: landed cost, or what each was asked for alone. */
@Component
class SetWeights {

    private static final String LANDED =
            "select piece_id, landed_minor as minor from piece_figures where piece_id in (:ids)";

    /** Every price that each was asked for on an offer of its own; the latest comes last. */
    private static final String ASKED = """
            select op.piece_id, pr.price_minor as minor
            from offer_piece op
            join document d on d.id = op.offer_id
            join offer_price pr on pr.offer_id = op.offer_id
            where op.piece_id in (:ids)
              and not exists (
                  select 1 from offer_piece other
                  where other.offer_id = op.offer_id and other.piece_id <> op.piece_id)
            order by d.doc_date, pr.valid_from, op.offer_id""";

    private record Row(UUID pieceId, long minor) {}

    private final PieceFinder finder;
    private final JdbcClient jdbc;
    private final CurrentShop shop;

    SetWeights(PieceFinder finder, JdbcClient jdbc, CurrentShop shop) {
        this.finder = finder;
        this.jdbc = jdbc;
        this.shop = shop;
    }

    /** Whether a button of the form asks for weights. */
    static boolean asked(String act) {
        return act.equals("by-cost") || act.equals("by-asked");
    }

    /** Fills the weights; where a piece has no such figure it says so beside the field and leaves what was typed. */
    void fill(OfferForm form, String act, Answers answers) {
        List<PieceRef> pieces = finder.read(answers, "codes", form.codes);
        if (pieces.isEmpty()) {
            return;
        }
        boolean byCost = act.equals("by-cost");
        Map<UUID, Amount> figures = figures(
                byCost ? LANDED : ASKED, pieces.stream().map(PieceRef::id).toList());
        String without = pieces.stream()
                .filter(piece -> figures.getOrDefault(piece.id(), Amount.ZERO).isZero())
                .map(PieceRef::code)
                .collect(Collectors.joining(", "));
        if (!without.isEmpty()) {
            answers.wrong("weights", byCost ? "selling.error.no-cost" : "selling.error.never-asked", without);
            return;
        }
        form.weights = pieces.stream()
                .map(piece -> shop.currency().plain(figures.get(piece.id())))
                .collect(Collectors.joining(" "));
    }

    private Map<UUID, Amount> figures(String sql, Collection<UUID> pieces) {
        Map<UUID, Amount> figures = new HashMap<>();
        jdbc.sql(sql)
                .param("ids", pieces)
                .query(Row.class)
                .list()
                .forEach(row -> figures.put(row.pieceId(), Amount.of(row.minor())));
        return figures;
    }
}
