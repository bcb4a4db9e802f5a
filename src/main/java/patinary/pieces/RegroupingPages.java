package patinary.pieces;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refused;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** What was joined or split, and taking it back. */
@Controller
@RequestMapping("/pieces/regroupings" + Ids.PATH)
class RegroupingPages {

    /** A piece on either side, with the cost that left it or came to it, in minor units. */
    record Side(UUID pieceId, String code, String title, boolean goesIn, long minor) {}

    private static final String SIDES = """
            select o.piece_id, p.code, p.title, o.goes_in,
                   cast(coalesce((select sum(f.amount_minor) from posting f
                                  where f.document_id = o.regrouping_id and f.piece_id = o.piece_id), 0) as bigint) as minor
            from (select regrouping_id, piece_id, true as goes_in from regrouping_from
                  union all
                  select regrouping_id, piece_id, false from regrouping_to) o
            join piece p on p.id = o.piece_id
            where o.regrouping_id = ?
            order by p.code""";

    private final JdbcClient jdbc;
    private final PieceDocuments documents;

    RegroupingPages(JdbcClient jdbc, PieceDocuments documents) {
        this.jdbc = jdbc;
        this.documents = documents;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        List<Side> sides = jdbc.sql(SIDES).param(id).query(Side.class).list();
        if (sides.isEmpty()) {
            throw new NotFound("regrouping " + id);
        }
        model.addAttribute("id", id);
        model.addAttribute("date", date(id));
        model.addAttribute("from", sides.stream().filter(Side::goesIn).toList());
        model.addAttribute("to", sides.stream().filter(side -> !side.goesIn()).toList());
        return "pieces/regrouping";
    }

    @PostMapping("/undo")
    String undo(@PathVariable UUID id, RedirectAttributes redirect) {
        try {
            documents.ungroup(id);
        } catch (Refused | PieceDocuments.StillNamed restingOnIt) {
            Notice.next(redirect, "pieces.not-undone");
            return "redirect:/pieces/regroupings/" + id;
        }
        Notice.next(redirect, "pieces.regrouping.undone");
        return "redirect:/pieces";
    }

    private java.time.LocalDate date(UUID id) {
        return jdbc.sql("select doc_date from document where id = ?")
                .param(id)
                .query(java.time.LocalDate.class)
                .single();
    }
}
