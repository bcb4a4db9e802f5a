package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
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
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Window;

/** Carriage and packing, of one sale or of none in particular. */
@Controller
class PostageController {

    private static final List<Choice> DIRECTIONS = List.of(
            Choice.said("OUT", "selling.postage.direction.OUT"), Choice.said("BACK", "selling.postage.direction.BACK"));

    private final SellingDocuments documents;
    private final MoneyLists lists;
    private final MoneyChoices money;
    private final SellingDays days;
    private final CurrentShop shop;
    private final Refusal refusal;

    PostageController(
            SellingDocuments documents,
            MoneyLists lists,
            MoneyChoices money,
            SellingDays days,
            CurrentShop shop,
            Refusal refusal) {
        this.documents = documents;
        this.lists = lists;
        this.money = money;
        this.days = days;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping("/postage")
    String list(@RequestParam(required = false) @Nullable Integer page, Model model) {
        model.addAttribute("rows", lists.postages(Window.of(page)));
        return "selling/postages";
    }

    @GetMapping("/postage/new")
    String blank(Model model) {
        return page(fresh(), null, model);
    }

    @GetMapping("/sales/{id}/postage")
    String forSale(@PathVariable UUID id, Model model) {
        requireSale(id);
        return page(fresh(), id, model);
    }

    @PostMapping("/postage/new")
    String add(
            @ModelAttribute("form") PostageForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        return store(form, errors, null, model, response, redirect);
    }

    @PostMapping("/sales/{id}/postage")
    String addToSale(
            @PathVariable UUID id,
            @ModelAttribute("form") PostageForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        requireSale(id);
        return store(form, errors, id, model, response, redirect);
    }

    @PostMapping("/postage/{postage}/remove")
    String remove(@PathVariable UUID postage, RedirectAttributes redirect) {
        try {
            documents.remove(Postage.class, postage);
            Notice.next(redirect, "selling.follower.removed");
        } catch (Refused refused) {
            Notice.next(redirect, "selling.error.undo");
        }
        return "redirect:/postage";
    }

    private String store(
            PostageForm form,
            BindingResult errors,
            @Nullable UUID sale,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = days.read(answers, "date", form.date);
        UUID place = money.read(answers, "place", form.place);
        Amount carriage = answers.optionalAmount("carriage", form.carriage).orElse(Amount.ZERO);
        Amount packing = answers.optionalAmount("packing", form.packing).orElse(Amount.ZERO);
        String note = answers.note("note", form.note, 2000);
        if (!answers.anyWrong() && carriage.plus(packing).isZero()) {
            answers.wrong("carriage", "selling.error.zero");
        }
        boolean back = form.direction.equals("BACK");
        if (!errors.hasErrors()) {
            record(new Postage(FormId.read(form.id), date, note, sale, place, carriage, packing, back), errors);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(form, sale, model);
        }
        Notice.next(redirect, "selling.postage.saved");
        return "redirect:" + back(sale);
    }

    private void record(Postage postage, BindingResult errors) {
        try {
            documents.record(postage);
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
    }

    private void requireSale(UUID id) {
        documents.read(Sale.class, id, Sale::id).orElseThrow(() -> new NotFound("Sale " + id));
    }

    private PostageForm fresh() {
        PostageForm form = new PostageForm();
        form.id = UUID.randomUUID().toString();
        form.date = days.today();
        return form;
    }

    private static String back(@Nullable UUID sale) {
        return sale == null ? "/postage" : "/sales/" + sale;
    }

    private String page(PostageForm form, @Nullable UUID sale, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("action", sale == null ? "/postage/new" : "/sales/" + sale + "/postage");
        model.addAttribute("back", back(sale));
        model.addAttribute("places", money.choices());
        model.addAttribute("directions", DIRECTIONS);
        return "selling/postage";
    }
}
