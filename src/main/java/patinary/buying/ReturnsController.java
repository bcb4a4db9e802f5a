package patinary.buying;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.ledger.StockPlace;
import patinary.pieces.PiecesAtHand;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlaces;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Things that went back to where they were bought. */
@Controller
@RequestMapping("/supplier-returns")
class ReturnsController {

    private final ReturnDesk desk;
    private final PiecesAtHand atHand;
    private final ReturnReader reader;
    private final ReceiptDesk receipts;
    private final ReceiptChoices choices;
    private final ReceiptFacts facts;
    private final SupplyReader supplies;
    private final MoneyPlaces places;
    private final CurrentShop shop;
    private final Refusal refusal;

    ReturnsController(
            ReturnDesk desk,
            PiecesAtHand atHand,
            ReturnReader reader,
            ReceiptDesk receipts,
            ReceiptChoices choices,
            ReceiptFacts facts,
            SupplyReader supplies,
            MoneyPlaces places,
            CurrentShop shop,
            Refusal refusal) {
        this.desk = desk;
        this.atHand = atHand;
        this.reader = reader;
        this.receipts = receipts;
        this.choices = choices;
        this.facts = facts;
        this.supplies = supplies;
        this.places = places;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("returns", desk.all());
        return "buying/returns";
    }

    @GetMapping("/new")
    String fresh(@RequestParam(required = false) @Nullable UUID receipt, Model model) {
        ReturnForm form = new ReturnForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        if (receipt != null) {
            form.receipt = receipt.toString();
            ReceiptContent content = receipts.read(receipt)
                    .orElseThrow(() -> new NotFound("receipt " + receipt))
                    .content();
            form.source = content.sourceId() == null ? "" : content.sourceId().toString();
        }
        form.supplies.add(new ReturnForm.SupplyRow());
        model.addAttribute("form", form);
        return page(form, model);
    }

    @PostMapping
    String record(
            @ModelAttribute("form") ReturnForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String action,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (action.equals("add-supply")) {
            form.supplies.add(new ReturnForm.SupplyRow());
            return page(form, model);
        }
        if (form.looksForPieces(action)) {
            return page(form, model);
        }
        SupplierReturn.Content content = reader.read(form, errors);
        if (!errors.hasErrors()) {
            try {
                desk.record(UUID.fromString(form.id), content);
            } catch (Refused refused) {
                refusal.tell(errors, refused);
            }
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, model);
        }
        Notice.next(redirect, "buying.return.saved");
        return "redirect:/supplier-returns/" + form.id;
    }

    @GetMapping("/{id}")
    String show(@PathVariable UUID id, Model model) {
        describe(id, model);
        model.addAttribute("postings", facts.postings(id));
        return "buying/return";
    }

    @GetMapping("/{id}/remove")
    String askToRemove(@PathVariable UUID id, Model model) {
        describe(id, model);
        return "buying/return-remove";
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        desk.find(id).orElseThrow(() -> new NotFound("return " + id));
        try {
            desk.remove(id);
        } catch (Refused sealed) {
            Notice.next(redirect, "buying.error.sealed");
            return "redirect:/supplier-returns/" + id;
        }
        Notice.next(redirect, "buying.return.removed");
        return "redirect:/supplier-returns";
    }

    private void describe(UUID id, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("facts", desk.find(id).orElseThrow(() -> new NotFound("return " + id)));
    }

    private String page(ReturnForm form, Model model) {
        model.addAttribute("atHand", atHand.offer(form, receipt(form)));
        model.addAttribute("sources", choices.sources());
        model.addAttribute("ways", PaidWith.choices(places.findAllByOrderByName(), true));
        model.addAttribute("supplies", supplies.plainChoices());
        model.addAttribute(
                "stockPlaces",
                Arrays.stream(StockPlace.values())
                        .map(place -> Choice.said(place.name(), "buying.return.place." + place.name()))
                        .toList());
        return "buying/return-form";
    }

    private static @Nullable UUID receipt(ReturnForm form) {
        try {
            return form.receipt.isBlank() ? null : UUID.fromString(form.receipt);
        } catch (IllegalArgumentException damaged) {
            return null;
        }
    }
}
