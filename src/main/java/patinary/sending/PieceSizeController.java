package patinary.sending;

import jakarta.servlet.http.HttpServletResponse;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.measure.Dimension;
import patinary.shop.CurrentShop;
import patinary.supplies.QuantityWords;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** How big a piece is and what it weighs: for its offer and for its parcel. */
@Controller
@RequestMapping("/pieces" + Ids.PATH + "/size")
class PieceSizeController {

    private record Row(
            String code,
            String title,
            @Nullable String size,
            @Nullable BigDecimal weightG) {}

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final CurrentShop shop;

    PieceSizeController(JdbcClient jdbc, TransactionTemplate transaction, CurrentShop shop) {
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.shop = shop;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        Row row = row(id);
        PieceSizeForm form = new PieceSizeForm();
        form.size = row.size() == null ? "" : row.size();
        form.weight = row.weightG() == null ? "" : QuantityWords.typed(row.weightG(), Dimension.MASS);
        return page(id, row, form, model);
    }

    @PostMapping
    String keep(
            @PathVariable UUID id,
            @ModelAttribute("form") PieceSizeForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Row row = row(id);
        Answers answers = new Answers(errors, shop.currency());
        String size = Measured.size(answers, "size", form.size);
        Optional<BigDecimal> grams = Measured.weight(answers, "weight", form.weight);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(id, row, form, model);
        }
        transaction.executeWithoutResult(status -> store(id, size, grams.orElse(null)));
        Notice.next(redirect, "sending.size.kept");
        return "redirect:/pieces/" + id;
    }

    private void store(UUID piece, String size, @Nullable BigDecimal grams) {
        jdbc.sql("delete from piece_size where piece_id = ?").param(piece).update();
        if (!size.isBlank() || grams != null) {
            jdbc.sql("insert into piece_size (piece_id, size, weight_g) values (?, ?, ?)")
                    .params(piece, size, grams)
                    .update();
        }
    }

    private Row row(UUID id) {
        return jdbc.sql("select p.code, p.title, z.size, z.weight_g from piece p"
                        + " left join piece_size z on z.piece_id = p.id where p.id = ?")
                .param(id)
                .query(Row.class)
                .optional()
                .orElseThrow(() -> new NotFound("Piece " + id));
    }

    private static String page(UUID id, Row row, PieceSizeForm form, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("code", row.code());
        model.addAttribute("title", row.title());
        model.addAttribute("form", form);
        return "sending/piece-size";
    }
}
