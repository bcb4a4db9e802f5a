package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
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
import patinary.money.Amount;
import patinary.phone.Delivery;
import patinary.web.Fmt;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Selling at the stall, in a few taps: pick what is sold, take the money, give the change. */
@Controller
@RequestMapping("/stall")
class StallController {

    private final StallDesk desk;
    private final StallPage page;
    private final StallGoods goods;
    private final SaleUndo undo;
    private final Fmt fmt;

    StallController(StallDesk desk, StallPage page, StallGoods goods, SaleUndo undo, Fmt fmt) {
        this.desk = desk;
        this.page = page;
        this.goods = goods;
        this.undo = undo;
        this.fmt = fmt;
    }

    /** Signed out it is a shell without anything of the shop, which a phone keeps and fills from its own lists. */
    @GetMapping
    String show(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String offer,
            @RequestParam(defaultValue = "") String piece,
            @Nullable Principal person,
            Model model) {
        if (person == null) {
            return page.shell(model);
        }
        List<ChannelFacts> channels = page.channels();
        StallForm form = desk.blank(channels);
        Optional<Ware> chosen = Ids.read(offer)
                .flatMap(goods::ofOffer)
                .or(() -> Ids.read(piece).flatMap(goods::withPiece))
                .or(() -> PieceFinder.codes(q).size() == 1 ? page.only(q).or(() -> goods.withCode(q)) : page.only(q));
        chosen.ifPresent(ware -> desk.fill(form, ware));
        return page.full(model, form, chosen, q, channels);
    }

    @PostMapping
    String sell(
            @ModelAttribute("form") StallForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        UUID id = FormId.read(form.id);
        Optional<StallDesk.Done> done = desk.sell(form, id, errors);
        if (done.isEmpty()) {
            response.setStatus(422);
            boolean twice =
                    errors.getGlobalErrors().stream().anyMatch(error -> StallDesk.SOLD_ALREADY.equals(error.getCode()));
            model.addAttribute("sold", twice ? goods.soldAlready(form.codes, id).orElse(null) : null);
            return page.full(model, form, page.ofForm(form), "", page.channels());
        }
        Optional<Amount> change = done.get().change();
        if (change.isPresent()) {
            Notice.next(redirect, "selling.stall.done-change", done.get().title(), fmt.money(change.get()));
        } else {
            Notice.next(redirect, "selling.stall.done", done.get().title());
        }
        return "redirect:/stall";
    }

    /** The same from a phone that kept it until there was reception; it may say how the sale was refused. */
    @PostMapping(headers = Delivery.KEY)
    ResponseEntity<?> deliver(@ModelAttribute("form") StallForm form, BindingResult errors, Delivery delivery) {
        return delivery.once(errors, () -> {
            Optional<StallDesk.Done> done = desk.sell(form, delivery.key(), errors);
            return done.map(sold -> new Delivery.Stored("/sales/" + delivery.key(), "selling.stall.done", sold.title()))
                    .orElse(null);
        });
    }

    @PostMapping("/{sale}/undo")
    String undo(@PathVariable UUID sale, RedirectAttributes redirect) {
        Notice.next(redirect, undo.undo(sale, "selling.stall.undone"));
        return "redirect:/stall";
    }

    /** The sale that a piece went with, for a phone that only knows the piece's code. */
    @GetMapping("/sold/{code}")
    String soldAlready(@PathVariable String code) {
        return goods.soldAlready(code, new UUID(0, 0))
                .map(sold -> "redirect:/sales/" + sold.saleId())
                .orElseThrow(() -> new NotFound("Sale of piece " + code));
    }
}
