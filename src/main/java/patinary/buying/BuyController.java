package patinary.buying;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.phone.Delivery;
import patinary.web.Choice;
import patinary.web.Notice;

/**
 * Buying, phone in hand. Signed out the page is a shell without anything of the shop, which its script fills from the
 * lists kept on the phone; signed in the server fills it, and it works without script as well.
 */
@Controller
@RequestMapping("/buy")
class BuyController {

    private static final List<String> USES = List.of("PIECES", "HOME", "CHARITY");
    private static final List<String> SETTLEMENTS = List.of("TAX", "DISCOUNT", "ROUNDING", "TOTAL", "OPEN");

    private final ReceiptDesk desk;
    private final BuyReader reader;
    private final BuyLists lists;
    private final Refusal refusal;

    BuyController(ReceiptDesk desk, BuyReader reader, BuyLists lists, Refusal refusal) {
        this.desk = desk;
        this.reader = reader;
        this.lists = lists;
        this.refusal = refusal;
    }

    @GetMapping
    String open(Model model, @Nullable Principal who) {
        BuyForm form = new BuyForm();
        form.id = UUID.randomUUID().toString();
        BuyEdits.atLeastOne(form);
        BuyLists.Offered offered = who == null ? BuyLists.Offered.NOTHING : lists.offered();
        offered.sources().stream().findFirst().ifPresent(last -> form.source = last.value());
        offered.paid().stream().findFirst().ifPresent(usual -> form.paidWith = usual.value());
        model.addAttribute("form", form);
        model.addAttribute("fresh", true);
        return page(model, offered);
    }

    @PostMapping
    String record(
            @ModelAttribute("form") BuyForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String action,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (BuyEdits.carryOut(form, action)) {
            return page(model, lists.offered());
        }
        BuyEdits.tidy(form);
        ReceiptReader.Outcome outcome = reader.read(form, errors);
        if (!errors.hasErrors()) {
            store(outcome.draft(), errors);
        }
        if (errors.hasErrors()) {
            model.addAttribute("difference", outcome.difference());
            response.setStatus(422);
            return page(model, lists.offered());
        }
        Notice.next(redirect, "buying.receipt.recorded");
        return "redirect:/receipts/" + outcome.draft().id();
    }

    /** What the phone kept, sent when it could. */
    @PostMapping(headers = Delivery.KEY)
    ResponseEntity<?> deliver(@ModelAttribute("form") BuyForm form, BindingResult errors, Delivery delivery) {
        return delivery.once(errors, () -> {
            BuyEdits.tidy(form);
            ReceiptDraft draft = reader.read(form, errors).draft();
            if (!errors.hasErrors()) {
                take(draft, errors);
            }
            return errors.hasErrors()
                    ? null
                    : new Delivery.Stored("/receipts/" + draft.id(), "buying.receipt.recorded");
        });
    }

    private void take(ReceiptDraft draft, BindingResult errors) {
        try {
            desk.record(draft);
        } catch (PieceTaken taken) {
            errors.reject("buying.error.piece-taken");
        }
    }

    private void store(ReceiptDraft draft, BindingResult errors) {
        try {
            recordOnce(draft);
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        } catch (PieceTaken taken) {
            errors.reject("buying.error.piece-taken");
        }
    }

    /** A clash means that the same purchase was stored at this moment. */
    private void recordOnce(ReceiptDraft draft) {
        try {
            desk.record(draft);
        } catch (DataIntegrityViolationException clash) {
            desk.record(draft);
        }
    }

    private String page(Model model, BuyLists.Offered offered) {
        model.addAttribute("kinds", choices(offered.kinds()));
        model.addAttribute("styles", choices(offered.styles()));
        model.addAttribute("percents", offered.percents());
        model.addAttribute("sources", offered.sources());
        model.addAttribute("paidWith", offered.paid());
        model.addAttribute("money", offered.money());
        model.addAttribute("uses", USES);
        model.addAttribute("settlements", SETTLEMENTS);
        model.addAttribute("mostRounding", ReceiptReader.Difference.MOST_ROUNDING);
        model.addAttribute("days", ReceiptChoices.days());
        return "buying/buy";
    }

    private static List<Choice> choices(List<BuyLists.Row> rows) {
        return rows.stream().map(row -> Choice.named(row.value(), row.text())).toList();
    }
}
