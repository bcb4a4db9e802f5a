package patinary.discounts;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
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
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.Notice;

/** The pages of her discount codes. */
@Controller
@RequestMapping("/discount-codes")
class DiscountController {

    private static final int CODE = 40;
    private static final int NOTE = 500;

    private final DiscountBook book;
    private final CurrentShop shop;

    DiscountController(DiscountBook book, CurrentShop shop) {
        this.book = book;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("rows", book.all());
        model.addAttribute("today", shop.today());
        return "discounts/codes";
    }

    @GetMapping("/new")
    String blank(Model model) {
        DiscountForm form = new DiscountForm();
        form.id = UUID.randomUUID().toString();
        form.validFrom = shop.today().toString();
        return page(form, "/discount-codes/new", null, model);
    }

    @GetMapping("/{id}")
    String edit(@PathVariable UUID id, Model model) {
        DiscountBook.Row row = book.row(id);
        Discount discount = row.discount();
        DiscountForm form = new DiscountForm();
        form.id = id.toString();
        form.version = row.version();
        form.code = discount.code();
        form.percent = discount.percent() == null
                ? ""
                : discount.percent().value().stripTrailingZeros().toPlainString();
        form.amount = discount.amount() == null ? "" : shop.currency().plain(discount.amount());
        form.validFrom = discount.validFrom().toString();
        form.validTo = discount.validTo() == null ? "" : discount.validTo().toString();
        form.note = row.note();
        return page(form, "/discount-codes/" + id, row, model);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") DiscountForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        return save(
                Ids.read(form.id).orElseGet(UUID::randomUUID),
                form,
                errors,
                "/discount-codes/new",
                null,
                model,
                response,
                redirect);
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") DiscountForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        return save(id, form, errors, "/discount-codes/" + id, book.row(id), model, response, redirect);
    }

    @PostMapping("/{id}/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        book.remove(id);
        Notice.next(redirect, "discounts.removed");
        return "redirect:/discount-codes";
    }

    private String save(
            UUID id,
            DiscountForm form,
            BindingResult errors,
            String action,
            DiscountBook.@Nullable Row row,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Optional<Discount> discount = read(form, new Answers(errors, shop.currency()), id);
        if (discount.isEmpty()) {
            response.setStatus(422);
            return page(form, action, row, model);
        }
        book.save(id, form.version, discount.get(), form.note.strip());
        Notice.next(redirect, "discounts.saved", discount.get().code());
        return "redirect:/discount-codes";
    }

    private Optional<Discount> read(DiscountForm form, Answers answers, UUID id) {
        String code = answers.text("code", form.code, CODE, "discounts.error.code");
        if (book.isTaken(code, id)) {
            answers.wrong("code", "discounts.error.taken");
        }
        answers.note("note", form.note, NOTE);
        Optional<Percent> percent =
                form.percent.isBlank() ? Optional.empty() : answers.percent("percent", form.percent);
        Optional<Amount> amount = answers.optionalAmount("amount", form.amount);
        if (form.percent.isBlank() == form.amount.isBlank()) {
            answers.wrong("percent", "discounts.error.one-of-both");
        }
        LocalDate from = answers.date("validFrom", form.validFrom);
        Optional<LocalDate> to =
                form.validTo.isBlank() ? Optional.empty() : Optional.of(answers.date("validTo", form.validTo));
        if (to.filter(last -> last.isBefore(from)).isPresent()) {
            answers.wrong("validTo", "discounts.error.ends-before");
        }
        return answers.anyWrong()
                ? Optional.empty()
                : Optional.of(new Discount(code, percent.orElse(null), amount.orElse(null), from, to.orElse(null)));
    }

    private static String page(DiscountForm form, String action, DiscountBook.@Nullable Row row, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("action", action);
        model.addAttribute("row", row);
        return "discounts/code";
    }
}
