package patinary.listing;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;

/** Her patterns for the texts of offers. */
@Controller
@RequestMapping("/listing/patterns")
class PatternController {

    static final int TITLE = 300;
    private static final int NAME = 80;
    private static final int BODY = 4000;

    private final Patterns patterns;
    private final CurrentShop shop;

    PatternController(Patterns patterns, CurrentShop shop) {
        this.patterns = patterns;
        this.shop = shop;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("rows", patterns.all());
        return "listing/patterns";
    }

    @GetMapping("/new")
    String blank(Model model) {
        PatternForm form = new PatternForm();
        form.id = UUID.randomUUID().toString();
        return page(form, model);
    }

    @GetMapping(Ids.PATH)
    String edit(@PathVariable UUID id, Model model) {
        Patterns.Kept kept = patterns.find(id).orElseThrow(() -> new NotFound("Pattern " + id));
        PatternForm form = new PatternForm();
        form.id = id.toString();
        form.version = kept.version();
        form.name = kept.name();
        form.channel = kept.channelId() == null ? "" : kept.channelId().toString();
        form.title = kept.title();
        form.body = kept.body();
        model.addAttribute("known", kept);
        return page(form, model);
    }

    @PostMapping
    String save(
            @ModelAttribute("form") PatternForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        Answers answers = new Answers(errors, shop.currency());
        Patterns.Kept read = read(form, answers);
        if (errors.hasErrors()) {
            response.setStatus(422);
            Ids.read(form.id).flatMap(patterns::find).ifPresent(known -> model.addAttribute("known", known));
            return page(form, model);
        }
        patterns.save(read);
        Notice.next(redirect, "listing.pattern.saved", read.name());
        return "redirect:/listing/patterns";
    }

    @PostMapping(Ids.PATH + "/remove")
    String remove(@PathVariable UUID id, RedirectAttributes redirect) {
        patterns.remove(id);
        Notice.next(redirect, "listing.pattern.removed");
        return "redirect:/listing/patterns";
    }

    private Patterns.Kept read(PatternForm form, Answers answers) {
        UUID id = Ids.read(form.id).orElseGet(UUID::randomUUID);
        String name = answers.text("name", form.name, NAME, "listing.error.name");
        if (patterns.all().stream()
                .anyMatch(other ->
                        other.name().equalsIgnoreCase(name) && !other.id().equals(id))) {
            answers.wrong("name", "listing.error.name-taken");
        }
        Optional<UUID> channel = answers.optionalId("channel", form.channel, "listing.error.channel");
        if (channel.isPresent()
                && patterns.channels().stream().noneMatch(one -> one.id().equals(channel.get()))) {
            answers.wrong("channel", "listing.error.channel");
        }
        String title = answers.text("title", form.title, TITLE, "listing.error.title");
        String body = answers.text("body", form.body, BODY, "listing.error.body");
        known(answers, "title", title);
        known(answers, "body", body);
        return new Patterns.Kept(id, name, channel.orElse(null), null, title, body, form.version);
    }

    private static void known(Answers answers, String field, String text) {
        List<String> unknown = Pattern.unknown(text);
        if (!unknown.isEmpty()) {
            answers.wrong(
                    field,
                    "listing.error.blank",
                    unknown.stream().map(word -> "{" + word + "}").collect(Collectors.joining(", ")));
        }
    }

    private String page(PatternForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute(
                "channels",
                patterns.channels().stream()
                        .map(channel -> Choice.named(channel.id().toString(), channel.name()))
                        .toList());
        model.addAttribute(
                "blanks", Arrays.stream(Blank.values()).map(Blank::word).toList());
        return "listing/pattern";
    }
}
