package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
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
import patinary.covering.CoverBook;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlace;
import patinary.web.Answers;
import patinary.web.Notice;
import patinary.web.Page;
import patinary.web.Window;

/** What channels paid out of their balances, less what they kept of it. */
@Controller
@RequestMapping("/payouts")
class PayoutController {

    private final SellingDocuments documents;
    private final MoneyLists lists;
    private final MoneyChoices money;
    private final CoverBook covers;
    private final SellingDays days;
    private final CurrentShop shop;
    private final Refusal refusal;

    PayoutController(
            SellingDocuments documents,
            MoneyLists lists,
            MoneyChoices money,
            CoverBook covers,
            SellingDays days,
            CurrentShop shop,
            Refusal refusal) {
        this.documents = documents;
        this.lists = lists;
        this.money = money;
        this.covers = covers;
        this.days = days;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String list(@RequestParam(required = false) @Nullable Integer page, Model model) {
        Page<MoneyLists.PayoutRow> rows = lists.payouts(Window.of(page));
        model.addAttribute("rows", rows);
        model.addAttribute(
                "standing",
                covers.standing(
                        rows.rows().stream().map(MoneyLists.PayoutRow::id).toList()));
        model.addAttribute("balances", lists.channelBalances());
        return "selling/payouts";
    }

    @GetMapping("/new")
    String blank(Model model) {
        PayoutForm form = new PayoutForm();
        form.id = UUID.randomUUID().toString();
        form.date = days.today();
        return page(form, model);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") PayoutForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = days.read(answers, "date", form.date);
        UUID from = money.read(answers, "from", form.from);
        UUID to = money.read(answers, "to", form.to);
        Amount amount = answers.amount("amount", form.amount);
        Amount fee = answers.optionalAmount("fee", form.fee).orElse(Amount.ZERO);
        String note = answers.note("note", form.note, 2000);
        if (!answers.anyWrong() && from.equals(to)) {
            answers.wrong("to", "selling.error.same-place");
        }
        if (!answers.anyWrong() && amount.plus(fee).isZero()) {
            answers.wrong("amount", "selling.error.zero");
        }
        if (!errors.hasErrors()) {
            record(new Payout(FormId.read(form.id), date, note, from, to, amount, fee), errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, model);
        }
        Notice.next(redirect, "selling.payout.saved");
        return "redirect:/payouts/" + form.id;
    }

    @PostMapping("/{payout}/remove")
    String remove(@PathVariable UUID payout, RedirectAttributes redirect) {
        try {
            documents.remove(Payout.class, payout);
            Notice.next(redirect, "selling.follower.removed");
        } catch (Refused refused) {
            Notice.next(redirect, "selling.error.undo");
        }
        return "redirect:/payouts";
    }

    private void record(Payout payout, BindingResult errors) {
        try {
            documents.record(payout);
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
    }

    private String page(PayoutForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("froms", money.choices(MoneyPlace.Kind.CHANNEL));
        model.addAttribute("tos", money.choices(MoneyPlace.Kind.BANK, MoneyPlace.Kind.CASH, MoneyPlace.Kind.CARD));
        return "selling/payout";
    }
}
