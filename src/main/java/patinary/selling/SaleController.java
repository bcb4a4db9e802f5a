package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Page;
import patinary.web.Window;

/** The list of sales, and the form of one. */
@Controller
@RequestMapping("/sales")
class SaleController {

    private static final List<Choice> ONLY = List.of(
            Choice.said("unposted", "selling.sales.only.unposted"),
            Choice.said("owed", "selling.sales.only.owed"),
            Choice.said("cancelled", "selling.sales.only.cancelled"));

    private final SaleList sales;
    private final SaleDesk desk;
    private final SaleBasket basket;
    private final SaleFilling filling;
    private final SellingDocuments documents;
    private final ChannelBook channels;
    private final TwiceDesk twice;

    SaleController(
            SaleList sales,
            SaleDesk desk,
            SaleBasket basket,
            SaleFilling filling,
            SellingDocuments documents,
            ChannelBook channels,
            TwiceDesk twice) {
        this.sales = sales;
        this.desk = desk;
        this.basket = basket;
        this.filling = filling;
        this.documents = documents;
        this.channels = channels;
        this.twice = twice;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String channel,
            @RequestParam(defaultValue = "") String month,
            @RequestParam(defaultValue = "") String only,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        SaleList.Search search = new SaleList.Search(q, channel, month, only);
        SaleList.Totals totals = sales.totals(search);
        Page<SaleList.Row> rows = sales.page(search, Window.of(page), totals.sales());
        model.addAttribute("search", search);
        model.addAttribute("totals", totals);
        model.addAttribute("rows", rows);
        model.addAttribute(
                "titles",
                sales.titles(rows.rows().stream().map(SaleList.Row::saleId).toList()));
        model.addAttribute("channels", channels.choices());
        model.addAttribute("onlys", ONLY);
        return "selling/sales";
    }

    @GetMapping("/new")
    String blank(
            @RequestParam(defaultValue = "") List<String> offer,
            @RequestParam(defaultValue = "") List<String> piece,
            @RequestParam(defaultValue = "") String bundle,
            @RequestParam MultiValueMap<String, String> asked,
            Model model) {
        SaleForm form = filling.blank();
        offer.forEach(one -> Ids.read(one).ifPresent(id -> basket.addOffer(form, id)));
        piece.forEach(codes -> basket.addPiece(form, codes));
        basket.addBundle(form, bundle);
        filling.prefill(form, asked);
        return desk.page(model, form, "/sales/new", null);
    }

    @GetMapping("/{id}/edit")
    String edit(@PathVariable UUID id, Model model) {
        SaleForm form = documents.read(Sale.class, id, filling::form).orElseThrow(() -> new NotFound("Sale " + id));
        return desk.page(model, form, "/sales/" + id + "/edit", null);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") SaleForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        UUID id = FormId.read(form.id);
        String action = "/sales/new";
        boolean settles = act.equals("settle");
        if (!settles && !act.equals("save")) {
            return desk.act(form, act, errors, id, null, model, action, response);
        }
        if (desk.tookChosen(form, errors)) {
            return desk.again(model, form, action, response);
        }
        boolean stored = settles
                ? twice.settle(form, errors, id)
                : desk.store(form, errors, id, null, sale -> documents.record(new Sale(id, sale)));
        return stored ? done(id, redirect) : desk.again(model, form, action, response);
    }

    @PostMapping("/{id}/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") SaleForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        SaleContent before =
                documents.read(Sale.class, id, Sale::content).orElseThrow(() -> new NotFound("Sale " + id));
        String action = "/sales/" + id + "/edit";
        if (!act.equals("save")) {
            return desk.act(form, act, errors, id, before, model, action, response);
        }
        if (desk.tookChosen(form, errors)) {
            return desk.again(model, form, action, response);
        }
        boolean stored = desk.store(
                form,
                errors,
                id,
                before,
                sale -> documents.change(Sale.class, id, form.version, old -> old.rewrite(sale)));
        return stored ? done(id, redirect) : desk.again(model, form, action, response);
    }

    private static String done(UUID id, RedirectAttributes redirect) {
        Notice.next(redirect, "selling.sale.saved");
        return "redirect:/sales/" + id;
    }
}
