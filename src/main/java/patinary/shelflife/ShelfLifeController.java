package patinary.shelflife;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.supplies.SupplyCatalog;
import patinary.web.Answers;
import patinary.web.NotFound;
import patinary.web.Notice;

/** What is past its day or near it, and the days of a supply's lots. */
@Controller
@RequestMapping("/supplies")
class ShelfLifeController {

    private final Lots lots;
    private final SupplyCatalog catalog;
    private final CurrentShop shop;

    ShelfLifeController(Lots lots, SupplyCatalog catalog, CurrentShop shop) {
        this.lots = lots;
        this.catalog = catalog;
        this.shop = shop;
    }

    /** A lot on the page. */
    record Row(Lot lot, Lot.Standing standing, @Nullable LocalDate best) {
        static Row of(Lot lot, LocalDate today) {
            return new Row(lot, lot.standing(today), lot.best().orElse(null));
        }
    }

    @GetMapping("/shelf-life")
    String list(Model model) {
        LocalDate today = shop.today();
        List<Row> rows = lots.left().stream()
                .filter(lot -> lot.best().isPresent())
                .sorted(Comparator.comparing((Lot lot) -> lot.best().orElseThrow()))
                .map(lot -> Row.of(lot, today))
                .toList();
        model.addAttribute("rows", rows);
        model.addAttribute("soon", Lot.SOON);
        return "shelflife/list";
    }

    @GetMapping("/{id}/lots")
    String days(@PathVariable UUID id, Model model) {
        LotForm form = new LotForm();
        dated(id).forEach(lot -> {
            LotForm.Line line = new LotForm.Line();
            line.document = lot.documentId().toString();
            line.opened = text(lot.openedOn());
            line.useBy = text(lot.useBy());
            form.lots.add(line);
        });
        model.addAttribute("form", form);
        return page(model, id);
    }

    @PostMapping("/{id}/lots")
    String keep(
            @PathVariable UUID id,
            @ModelAttribute("form") LotForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        for (int i = 0; i < form.lots.size(); i++) {
            check("lots[" + i + "].", form.lots.get(i), answers);
        }
        if (answers.anyWrong()) {
            response.setStatus(422);
            return page(model, id);
        }
        List<Lot> known = dated(id);
        form.lots.forEach(line -> known.stream()
                .filter(lot -> lot.documentId().toString().equals(line.document))
                .forEach(lot -> lots.keep(lot.documentId(), id, day(line.opened), day(line.useBy))));
        Notice.next(redirect, "shelflife.kept");
        return "redirect:/supplies/" + id;
    }

    private void check(String at, LotForm.Line line, Answers answers) {
        Optional<LocalDate> opened = answers.optionalDate(at + "opened", line.opened);
        answers.optionalDate(at + "useBy", line.useBy);
        if (opened.filter(day -> day.isAfter(shop.today())).isPresent()) {
            answers.wrong(at + "opened", "shelflife.error.not-yet");
        }
    }

    private static Optional<LocalDate> day(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(Answers.day(text.strip()));
    }

    /** The lots that came in by a receipt or on the first day, the newest first: a pot has its day from its entry. */
    private List<Lot> dated(UUID supply) {
        return lots.of(supply).stream()
                .filter(lot -> !lot.isPot())
                .sorted(Comparator.comparing(Lot::cameOn).reversed())
                .toList();
    }

    private String page(Model model, UUID id) {
        SupplyCatalog.Known supply = catalog.find(id).orElseThrow(() -> new NotFound("supply " + id));
        LocalDate today = shop.today();
        model.addAttribute("supply", supply);
        model.addAttribute(
                "rows", dated(id).stream().map(lot -> Row.of(lot, today)).toList());
        return "shelflife/lots";
    }

    private static String text(@Nullable LocalDate day) {
        return day == null ? "" : day.toString();
    }
}
