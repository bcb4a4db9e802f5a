package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Says of a sale that is recorded what it was packed in, and nothing else of it. */
@Controller
@RequestMapping("/sales/{id}/packing")
class PackController {

    private final SellingDocuments documents;
    private final WrapAnswers reader;
    private final WrapDesk desk;
    private final CurrentShop shop;
    private final Refusal refusal;

    PackController(SellingDocuments documents, WrapAnswers reader, WrapDesk desk, CurrentShop shop, Refusal refusal) {
        this.documents = documents;
        this.reader = reader;
        this.desk = desk;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String show(@PathVariable UUID id, Model model) {
        Sale sale = sale(id);
        return page(id, form(sale), sale.content(), model);
    }

    /** A way that was tapped is kept at once where it can be read as it stands; the other buttons store nothing. */
    @PostMapping
    String act(
            @PathVariable UUID id,
            @ModelAttribute("form") PackForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String act,
            @RequestParam(defaultValue = "false") boolean atOnce,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        SaleContent sale = sale(id).content();
        if (!act.equals("save")) {
            desk.act(form.wraps, act, sale.channelId(), id);
            if (!atOnce) {
                return page(id, form, sale, model);
            }
        }
        if (store(id, form, sale, errors)) {
            Notice.next(redirect, "selling.pack.saved");
            return "redirect:/sales/" + id;
        }
        response.setStatus(422);
        return page(id, form, sale, model);
    }

    private boolean store(UUID id, PackForm form, SaleContent sale, BindingResult errors) {
        List<Wrap> wraps = reader.read(form.wraps, new Answers(errors, shop.currency()), sale.date());
        if (errors.hasErrors()) {
            return false;
        }
        try {
            documents.change(Sale.class, id, form.version, changed -> changed.packed(wraps));
            return true;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return false;
        }
    }

    private Sale sale(UUID id) {
        return documents.read(Sale.class, id, Function.identity()).orElseThrow(() -> new NotFound("Sale " + id));
    }

    private static PackForm form(Sale sale) {
        PackForm form = new PackForm();
        form.version = sale.version();
        sale.content().wraps().forEach(wrap -> form.wraps.add(SaleFilling.line(wrap)));
        return form;
    }

    private String page(UUID id, PackForm form, SaleContent sale, Model model) {
        desk.show(model, form.wraps, sale.channelId(), id);
        model.addAttribute("form", form);
        model.addAttribute("id", id);
        model.addAttribute("sale", sale);
        model.addAttribute("action", "/sales/" + id + "/packing");
        return "selling/packing";
    }
}
