package patinary.packing;

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
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Window;

/** The market days, a new one, and changing what is said of one. */
@Controller
@RequestMapping("/market-days")
class PackingController {

    /** A list's title is the place of what is packed. */
    private static final int TITLE = 60;

    private static final int NOTE = 1000;

    private final PackingLists lists;
    private final CurrentShop shop;

    PackingController(PackingLists lists, CurrentShop shop) {
        this.lists = lists;
        this.shop = shop;
    }

    @GetMapping
    String list(@RequestParam(required = false) @Nullable Integer page, Model model) {
        model.addAttribute("rows", lists.page(Window.of(page)));
        return "packing/lists";
    }

    @GetMapping("/new")
    String fresh(Model model) {
        PackingForm form = new PackingForm();
        form.day = shop.today().toString();
        model.addAttribute("form", form);
        return form(null, model);
    }

    @PostMapping("/new")
    String start(
            @ModelAttribute("form") PackingForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        UUID id = UUID.randomUUID();
        PackingLists.Facts facts = read(id, form, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return form(null, model);
        }
        lists.add(facts);
        Notice.next(redirect, "packing.started", facts.title());
        return "redirect:/market-days/" + id + "/add";
    }

    @GetMapping(Ids.PATH + "/edit")
    String edit(@PathVariable UUID id, Model model) {
        PackingLists.Facts facts = known(id);
        PackingForm form = new PackingForm();
        form.version = lists.version(id);
        form.title = facts.title();
        form.day = facts.marketDay().toString();
        form.channel = facts.channelId() == null ? "" : facts.channelId().toString();
        form.note = facts.note();
        model.addAttribute("form", form);
        return form(id, model);
    }

    @PostMapping(Ids.PATH + "/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") PackingForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        known(id);
        PackingLists.Facts facts = read(id, form, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return form(id, model);
        }
        lists.change(facts, form.version);
        Notice.next(redirect, "packing.saved");
        return "redirect:/market-days/" + id;
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        String title = known(id).title();
        boolean gone = lists.remove(id);
        Notice.next(redirect, gone ? "packing.removed" : "packing.not-removed", title);
        return gone ? "redirect:/market-days" : "redirect:/market-days/" + id;
    }

    private PackingLists.Facts known(UUID id) {
        return lists.find(id).orElseThrow(() -> new NotFound("packing list " + id));
    }

    private PackingLists.Facts read(UUID id, PackingForm form, BindingResult errors) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate day = answers.date("day", form.day);
        UUID channel = answers.optionalId("channel", form.channel, "packing.error.channel")
                .orElse(null);
        if (channel != null
                && lists.channels().stream().noneMatch(known -> known.value().equals(form.channel))) {
            answers.wrong("channel", "packing.error.channel");
        }
        return new PackingLists.Facts(
                id,
                answers.text("title", form.title, TITLE, "packing.error.title"),
                day,
                channel,
                answers.note("note", form.note, NOTE));
    }

    private String form(@Nullable UUID id, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("channels", lists.channels());
        return "packing/form";
    }
}
