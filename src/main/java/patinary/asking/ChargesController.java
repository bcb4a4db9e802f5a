package patinary.asking;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
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
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Notice;

/** Fees for offers and months that are due: a list that makes expenses of what she ticks. */
@Controller
@RequestMapping("/channel-fees")
class ChargesController {

    /** As many on one page; the next come when these are settled. */
    private static final int SHOWN = 100;

    private final ChannelCharges charges;
    private final CurrentShop shop;
    private final Refusal refusal;
    private final MessageSource messages;

    ChargesController(ChannelCharges charges, CurrentShop shop, Refusal refusal, MessageSource messages) {
        this.charges = charges;
        this.shop = shop;
        this.refusal = refusal;
        this.messages = messages;
    }

    @GetMapping
    String list(Model model) {
        return page(new ChargesForm(), Map.of(), model);
    }

    /** @param act {@code record} makes expenses, {@code waive} says that they were not owed */
    @PostMapping
    String settle(
            @ModelAttribute("form") ChargesForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "record") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        boolean waive = act.equals("waive");
        List<ChannelCharges.Paid> chosen = chosen(form, waive, errors);
        if (!errors.hasErrors()) {
            store(chosen, waive, errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            Map<String, ChargesForm.Row> typed =
                    form.rows.stream().collect(Collectors.toMap(row -> row.key, row -> row, (one, other) -> one));
            return page(form, typed, model);
        }
        Notice.next(redirect, waive ? "asking.due.waived" : "asking.due.recorded", String.valueOf(chosen.size()));
        return "redirect:/channel-fees";
    }

    private void store(List<ChannelCharges.Paid> chosen, boolean waive, BindingResult errors) {
        try {
            if (waive) {
                charges.waive(chosen.stream().map(ChannelCharges.Paid::charge).toList());
            } else {
                charges.record(chosen);
            }
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
    }

    /** One that is no longer due, as it was settled in another window, falls away. */
    private List<ChannelCharges.Paid> chosen(ChargesForm form, boolean waive, BindingResult errors) {
        Answers answers = new Answers(errors, shop.currency());
        Map<String, Charge> due = charges.due().stream().collect(Collectors.toMap(Charge::key, Function.identity()));
        List<ChannelCharges.Paid> chosen = new ArrayList<>();
        for (int i = 0; i < form.rows.size(); i++) {
            ChargesForm.Row row = form.rows.get(i);
            Charge charge = row.take ? due.get(row.key) : null;
            if (charge != null) {
                String field = "rows[" + i + "].amount";
                Amount amount = waive ? Amount.ZERO : answers.amount(field, row.amount);
                if (!waive && amount.isZero() && !errors.hasFieldErrors(field)) {
                    answers.wrong(field, "asking.error.zero");
                }
                chosen.add(new ChannelCharges.Paid(charge, amount, note(charge)));
            }
        }
        if (chosen.isEmpty()) {
            answers.wrong("", "asking.error.none-ticked");
        }
        return chosen;
    }

    private String note(Charge charge) {
        return charge.month() == null
                ? messages.getMessage(
                        "asking.due.note-offer", new Object[] {charge.title()}, LocaleContextHolder.getLocale())
                : messages.getMessage(
                        "asking.due.note-month",
                        new Object[] {charge.month().toString().substring(0, 7)},
                        LocaleContextHolder.getLocale());
    }

    private String page(ChargesForm form, Map<String, ChargesForm.Row> typed, Model model) {
        List<Charge> all = charges.due();
        List<Charge> shown = all.subList(0, Math.min(SHOWN, all.size()));
        form.rows = new ArrayList<>(shown.stream()
                .map(charge -> row(charge, typed.get(charge.key())))
                .toList());
        model.addAttribute("form", form);
        model.addAttribute("due", shown);
        model.addAttribute("more", all.size() - shown.size());
        return "asking/channel-fees";
    }

    private ChargesForm.Row row(Charge charge, ChargesForm.@Nullable Row typed) {
        if (typed != null) {
            return typed;
        }
        ChargesForm.Row row = new ChargesForm.Row();
        row.key = charge.key();
        row.amount = shop.currency().plain(charge.amount());
        return row;
    }
}
