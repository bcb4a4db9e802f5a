package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refused;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Window;

/** Money from buyers: for a sale that is owed, for what was owed on the first day, or ahead of a sale. */
@Controller
class PaymentController {

    /** Where the form is sent, and the page to go back to. */
    private record Road(String action, String back) {}

    private static final Road DEPOSIT = new Road("/payments/new", "/payments");
    private static final Road FIRST_DAY = new Road("/payments/opening", "/payments");

    private final PaymentDesk desk;
    private final MoneyLists lists;
    private final SellingDocuments documents;
    private final MoneyChoices money;
    private final BuyerMoney buyers;

    PaymentController(
            PaymentDesk desk, MoneyLists lists, SellingDocuments documents, MoneyChoices money, BuyerMoney buyers) {
        this.desk = desk;
        this.lists = lists;
        this.documents = documents;
        this.money = money;
        this.buyers = buyers;
    }

    @GetMapping("/payments")
    String list(@RequestParam(required = false) @Nullable Integer page, Model model) {
        model.addAttribute("rows", lists.payments(Window.of(page)));
        BuyerMoney.Held held = buyers.held();
        model.addAttribute("deposits", held.deposits());
        model.addAttribute("credits", held.credits());
        model.addAttribute("owing", lists.owing());
        return "selling/payments";
    }

    @GetMapping("/payments/new")
    String blank(Model model) {
        return page(desk.blank(), null, DEPOSIT, model);
    }

    @PostMapping("/payments/new")
    String deposit(
            @ModelAttribute("form") PaymentForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (!desk.take(form, errors, null)) {
            response.setStatus(422);
            return page(form, null, DEPOSIT, model);
        }
        Notice.next(redirect, "selling.payment.saved");
        return "redirect:/payments";
    }

    @PostMapping("/payments/{payment}/remove")
    String remove(@PathVariable UUID payment, RedirectAttributes redirect) {
        try {
            documents.remove(BuyerPayment.class, payment);
            Notice.next(redirect, "selling.follower.removed");
        } catch (Refused refused) {
            Notice.next(redirect, "selling.error.undo");
        }
        return "redirect:/payments";
    }

    @GetMapping("/sales/{id}/payment")
    String forSale(@PathVariable UUID id, Model model) {
        PaymentForm form = desk.blank();
        SaleContent sale = documents.read(Sale.class, id, Sale::content).orElseThrow(() -> new NotFound("Sale " + id));
        form.buyer = sale.buyer();
        form.place = String.valueOf(sale.feePlaceId());
        return page(form, id, road(id), model);
    }

    @PostMapping("/sales/{id}/payment")
    String pay(
            @PathVariable UUID id,
            @ModelAttribute("form") PaymentForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        documents.read(Sale.class, id, Sale::id).orElseThrow(() -> new NotFound("Sale " + id));
        if (!desk.take(form, errors, id)) {
            response.setStatus(422);
            return page(form, id, road(id), model);
        }
        Notice.next(redirect, "selling.payment.saved");
        return "redirect:/sales/" + id;
    }

    @GetMapping("/payments/opening")
    String forFirstDay(Model model) {
        return page(desk.blank(), opening(), FIRST_DAY, model);
    }

    @PostMapping("/payments/opening")
    String payFirstDay(
            @ModelAttribute("form") PaymentForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        UUID opening = opening();
        if (!desk.take(form, errors, opening)) {
            response.setStatus(422);
            return page(form, opening, FIRST_DAY, model);
        }
        Notice.next(redirect, "selling.payment.saved");
        return "redirect:/payments";
    }

    private UUID opening() {
        return buyers.opening().orElseThrow(() -> new NotFound("the opening"));
    }

    private static Road road(UUID sale) {
        return new Road("/sales/" + sale + "/payment", "/sales/" + sale);
    }

    private String page(PaymentForm form, @Nullable UUID origin, Road road, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("sale", origin);
        model.addAttribute("owed", origin == null ? null : buyers.owed(origin));
        model.addAttribute("action", road.action());
        model.addAttribute("back", road.back());
        model.addAttribute("places", money.choices());
        return "selling/payment";
    }
}
