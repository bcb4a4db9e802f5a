package patinary.bench;

import jakarta.servlet.http.HttpServletResponse;
import java.security.Principal;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
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
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.Notice;

/** The bench page for a phone and hands with paint on them: a few taps make an entry. */
@Controller
@RequestMapping("/bench/now")
class NowController {

    private final NowPage page;
    private final NowActs acts;
    private final NowClock clock;
    private final BenchFormPage reading;
    private final BenchEntries entries;
    private final CurrentShop shop;
    private final Refusal refusal;

    NowController(
            NowPage page,
            NowActs acts,
            NowClock clock,
            BenchFormPage reading,
            BenchEntries entries,
            CurrentShop shop,
            Refusal refusal) {
        this.page = page;
        this.acts = acts;
        this.clock = clock;
        this.reading = reading;
        this.entries = entries;
        this.shop = shop;
        this.refusal = refusal;
    }

    /** @param kept the entry that was just kept, which may still be taken back here */
    @GetMapping
    String now(
            @RequestParam(defaultValue = "") List<String> piece,
            @RequestParam(defaultValue = "") String kept,
            @Nullable Principal who,
            Model model) {
        if (who == null) {
            page.shell(model);
            return "bench/now";
        }
        NowForm form = new NowForm();
        BenchClock.State state = clock.state(who.getName());
        List<UUID> asked = ChosenIds.read(piece);
        (asked.isEmpty() ? NowClock.pieces(state) : asked).forEach(id -> form.pieces.add(id.toString()));
        List<WorkedPiece> chosen = reading.chosen(form);
        reading.plan(form, chosen);
        Ids.read(kept).flatMap(entries::find).ifPresent(entry -> model.addAttribute("kept", entry));
        page.fill(model, form, chosen, who.getName(), state);
        return "bench/now";
    }

    @PostMapping(params = "act")
    String act(
            @ModelAttribute("form") NowForm form,
            BindingResult errors,
            @RequestParam String act,
            Principal who,
            Model model,
            HttpServletResponse response) {
        acts.act(act, who.getName(), form, new Answers(errors, shop.currency()));
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        return show(model, form, who);
    }

    @PostMapping
    String keep(
            @ModelAttribute("form") NowForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "") String enter,
            Principal who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        if (form.looksForPieces(enter)) {
            return show(model, form, who);
        }
        Answers answers = new Answers(errors, shop.currency());
        UUID id = answers.id("id", form.id, "bench.error.form-id");
        String typed = form.minutes;
        form.minutes = clock.minutes(who.getName(), typed, answers);
        BenchContent content = reading.read(NowReading.entry(form, answers), answers);
        form.minutes = typed;
        try {
            if (!answers.anyWrong()) {
                boolean isNew = entries.record(id, content);
                clock.off(who.getName());
                Notice.next(redirect, isNew ? "bench.saved" : "bench.known");
                redirect.addAttribute("kept", id);
                return "redirect:/bench/now";
            }
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
        response.setStatus(422);
        return show(model, form, who);
    }

    /** The same from a phone, maybe days later. The phone has said the minutes, so the clock is not asked. */
    @PostMapping(headers = Delivery.KEY)
    ResponseEntity<?> deliver(@ModelAttribute("form") NowForm form, BindingResult errors, Delivery delivery) {
        Answers answers = new Answers(errors, shop.currency());
        return delivery.once(errors, () -> {
            BenchContent content = reading.read(NowReading.entry(form, answers), answers);
            if (answers.anyWrong()) {
                return null;
            }
            boolean isNew = entries.record(delivery.key(), content);
            return new Delivery.Stored(
                    "/bench/" + delivery.key() + (isNew ? version(delivery.key()) : ""), "bench.saved");
        });
    }

    /** Only with the version it was kept in can an entry be taken back. */
    private String version(UUID id) {
        return entries.find(id).map(entry -> "?version=" + entry.version()).orElse("");
    }

    /** Takes the entry back, unless it was changed since. */
    @PostMapping("/undo")
    String undo(@RequestParam UUID id, @RequestParam long version, RedirectAttributes redirect) {
        try {
            boolean asKept =
                    entries.find(id).filter(entry -> entry.version() == version).isPresent();
            if (asKept) {
                entries.remove(id);
            }
            Notice.next(redirect, asKept ? "bench.now.undone" : "bench.now.not-undone");
        } catch (Refused refused) {
            Notice.next(redirect, "bench.not-removed");
        }
        return "redirect:/bench/now";
    }

    private String show(Model model, NowForm form, Principal who) {
        page.fill(model, form, reading.chosen(form), who.getName(), clock.state(who.getName()));
        return "bench/now";
    }
}
