package patinary.listing;

import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
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
import patinary.finishes.CautionBook;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The text of one offer by one of her patterns: as it is made, and as she edited it. */
@Controller
@RequestMapping("/listing" + Ids.PATH)
class TextController {

    private static final int BODY = 8000;

    /** Title and text as a pattern makes them now. */
    record Made(String title, String body) {

        String whole() {
            return title + "\n\n" + body + "\n";
        }
    }

    private final OfferReader offers;
    private final Patterns patterns;
    private final Filling filling;
    private final CautionBook cautions;
    private final CurrentShop shop;

    TextController(OfferReader offers, Patterns patterns, Filling filling, CautionBook cautions, CurrentShop shop) {
        this.offers = offers;
        this.patterns = patterns;
        this.filling = filling;
        this.cautions = cautions;
        this.shop = shop;
    }

    @GetMapping
    String show(@PathVariable UUID id, @RequestParam(required = false) @Nullable UUID pattern, Model model) {
        OfferFacts offer = offer(id);
        Optional<Patterns.Kept> chosen = pattern == null ? patterns.usual(id) : patterns.find(pattern);
        if (chosen.isEmpty()) {
            return page(offer, null, new TextForm(), model);
        }
        Made made = made(offer, chosen.get());
        Optional<Patterns.Text> kept = patterns.text(id, chosen.get().id());
        TextForm form = new TextForm();
        form.version = kept.map(Patterns.Text::version).orElse(0L);
        form.title = kept.map(Patterns.Text::title).orElse(made.title());
        form.body = kept.map(Patterns.Text::body).orElse(made.body());
        return page(offer, chosen.get(), form, model);
    }

    /** @param act {@code save} keeps what she typed, {@code anew} forgets it */
    @PostMapping
    String act(
            @PathVariable UUID id,
            @RequestParam UUID pattern,
            @RequestParam(defaultValue = "save") String act,
            @ModelAttribute("form") TextForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        OfferFacts offer = offer(id);
        Patterns.Kept chosen = patterns.find(pattern).orElseThrow(() -> new NotFound("Pattern " + pattern));
        if (act.equals("anew")) {
            patterns.forget(id, pattern);
            Notice.next(redirect, "listing.anew");
            return "redirect:/listing/" + id + "?pattern=" + pattern;
        }
        Answers answers = new Answers(errors, shop.currency());
        String title = answers.text("title", form.title, PatternController.TITLE, "listing.error.title");
        String body = answers.text("body", form.body, BODY, "listing.error.body");
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(offer, chosen, form, model);
        }
        patterns.keep(id, pattern, new Patterns.Text(title, plain(body), form.version));
        Notice.next(redirect, "listing.kept");
        return "redirect:/listing/" + id + "?pattern=" + pattern;
    }

    /** Title and text as a file, as she edited them or as they are made. */
    @GetMapping("/text.txt")
    ResponseEntity<byte[]> file(@PathVariable UUID id, @RequestParam UUID pattern) {
        OfferFacts offer = offer(id);
        Patterns.Kept chosen = patterns.find(pattern).orElseThrow(() -> new NotFound("Pattern " + pattern));
        String text = patterns.text(id, pattern)
                .map(kept -> new Made(kept.title(), kept.body()))
                .orElseGet(() -> made(offer, chosen))
                .whole();
        return ResponseEntity.ok()
                .contentType(new MediaType(MediaType.TEXT_PLAIN, StandardCharsets.UTF_8))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("offer-" + String.join("-", codes(offer)) + ".txt")
                                .build()
                                .toString())
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    static List<String> codes(OfferFacts offer) {
        return offer.each(piece -> piece.code().replaceAll("[^A-Za-z0-9]", "")).stream()
                .limit(5)
                .toList();
    }

    private Made made(OfferFacts offer, Patterns.Kept pattern) {
        var known = filling.of(offer);
        return new Made(
                Pattern.read(pattern.title()).fill(known).replace('\n', ' '),
                Pattern.read(pattern.body()).fill(known));
    }

    /** Lines end the same way however a browser sends them. */
    private static String plain(String text) {
        return text.replace("\r\n", "\n");
    }

    private OfferFacts offer(UUID id) {
        return offers.find(id).orElseThrow(() -> new NotFound("Offer " + id));
    }

    private String page(OfferFacts offer, Patterns.@Nullable Kept pattern, TextForm form, Model model) {
        model.addAttribute("offer", offer);
        model.addAttribute("pattern", pattern);
        model.addAttribute("patterns", patterns.all());
        model.addAttribute("form", form);
        model.addAttribute("photos", offers.photos(offer.id()));
        if (pattern != null) {
            Made made = made(offer, pattern);
            Made typed = new Made(form.title, plain(form.body));
            model.addAttribute("edited", patterns.text(offer.id(), pattern.id()).isPresent());
            model.addAttribute(
                    "differences", made.equals(typed) ? List.of() : LineDiff.between(typed.whole(), made.whole()));
            model.addAttribute(
                    "cautions",
                    cautions.about(List.of(), List.of(form.title, form.body)).stream()
                            .filter(caution -> caution.id().startsWith("DESC-"))
                            .toList());
        }
        return "listing/text";
    }
}
