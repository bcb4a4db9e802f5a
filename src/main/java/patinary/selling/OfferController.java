package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
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
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.pieces.Styles;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Choice;
import patinary.web.Ids;
import patinary.web.NotFound;
import patinary.web.Notice;
import patinary.web.Window;

/** The list of offers, and the form of one. */
@Controller
@RequestMapping("/offers")
class OfferController {

    private static final List<Choice> STATES = List.of(
            Choice.said("LIVE", "selling.offer.state.LIVE"),
            Choice.said("PAUSED", "selling.offer.state.PAUSED"),
            Choice.said("ENDED", "selling.offer.state.ENDED"),
            Choice.said("SOLD", "selling.offer.state.SOLD"));

    private static final List<Choice> WAYS = List.of(
            Choice.said("SET", "selling.offer.together.SET"), Choice.said("ALIKE", "selling.offer.together.ALIKE"));

    private final OfferList offers;
    private final OfferAnswers reader;
    private final SellingDocuments documents;
    private final OfferGroups groups;
    private final SetWeights weights;
    private final ChannelBook channels;
    private final PieceFinder pieces;
    private final Styles styles;
    private final CurrentShop shop;
    private final Refusal refusal;

    OfferController(
            OfferList offers,
            OfferAnswers reader,
            SellingDocuments documents,
            OfferGroups groups,
            SetWeights weights,
            ChannelBook channels,
            PieceFinder pieces,
            Styles styles,
            CurrentShop shop,
            Refusal refusal) {
        this.offers = offers;
        this.reader = reader;
        this.documents = documents;
        this.groups = groups;
        this.weights = weights;
        this.channels = channels;
        this.pieces = pieces;
        this.styles = styles;
        this.shop = shop;
        this.refusal = refusal;
    }

    @GetMapping
    String list(
            @RequestParam(defaultValue = "") String q,
            @RequestParam(defaultValue = "") String channel,
            @RequestParam(defaultValue = "") String style,
            @RequestParam(defaultValue = "") String state,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        OfferList.Search search = new OfferList.Search(q, channel, style, state);
        model.addAttribute("search", search);
        model.addAttribute("rows", offers.page(search, Window.of(page)));
        model.addAttribute("channels", channels.choices());
        model.addAttribute(
                "styles",
                styles.findAllByOrderByName().stream()
                        .map(one -> Choice.named(one.id().toString(), one.name()))
                        .toList());
        model.addAttribute("states", STATES);
        return "selling/offers";
    }

    @GetMapping("/new")
    String blank(
            @RequestParam(defaultValue = "") String pieces, @ModelAttribute("given") OfferForm given, Model model) {
        given.codes = given.codes.isEmpty() ? pieces : given.codes;
        return page(model, reader.blank(given), "/offers/new");
    }

    @GetMapping("/{id}/like")
    String like(@PathVariable UUID id, Model model) {
        OfferForm form = documents.read(Offer.class, id, reader::like).orElseThrow(() -> new NotFound("Offer " + id));
        return page(model, form, "/offers/new");
    }

    @GetMapping("/{id}/edit")
    String edit(@PathVariable UUID id, Model model) {
        OfferForm form = documents.read(Offer.class, id, reader::form).orElseThrow(() -> new NotFound("Offer " + id));
        return page(model, form, "/offers/" + id + "/edit");
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") OfferForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        form.takeChosen();
        if (act.equals("add") || form.looksForPieces(act)) {
            return page(model, form, "/offers/new");
        }
        if (act.equals("ask")) {
            return ask(form, null, redirect);
        }
        if (SetWeights.asked(act)) {
            return weighed(model, form, act, errors, "/offers/new", response);
        }
        Offer.Content content = reader.read(form, errors, null);
        UUID id = FormId.read(form.id);
        return store(errors, () -> record(form, id, content))
                ? done(id, redirect)
                : again(model, form, "/offers/new", response);
    }

    @PostMapping("/{id}/edit")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") OfferForm form,
            BindingResult errors,
            @RequestParam(defaultValue = "save") String act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        form.takeChosen();
        if (act.equals("add") || form.looksForPieces(act)) {
            return page(model, form, "/offers/" + id + "/edit");
        }
        if (act.equals("ask")) {
            return ask(form, id, redirect);
        }
        if (SetWeights.asked(act)) {
            return weighed(model, form, act, errors, "/offers/" + id + "/edit", response);
        }
        Offer.Content before =
                documents.read(Offer.class, id, Offer::content).orElseThrow(() -> new NotFound("Offer " + id));
        Offer.Content content = reader.read(form, errors, before);
        return store(errors, () -> documents.change(Offer.class, id, form.version, offer -> offer.rewrite(content)))
                ? done(id, redirect)
                : again(model, form, "/offers/" + id + "/edit", response);
    }

    private void record(OfferForm form, UUID id, Offer.Content content) {
        if (form.together.equals("ALIKE")) {
            groups.record(id, content, Ids.read(form.like).orElse(null));
        } else {
            documents.record(new Offer(id, content));
        }
    }

    private boolean store(BindingResult errors, Runnable storing) {
        if (!errors.hasErrors()) {
            try {
                storing.run();
            } catch (Refused refused) {
                refusal.tell(errors, refused);
            }
        }
        return !errors.hasErrors();
    }

    private static String done(UUID id, RedirectAttributes redirect) {
        Notice.next(redirect, "selling.offer.saved");
        return "redirect:/offers/" + id;
    }

    private String again(Model model, OfferForm form, String action, HttpServletResponse response) {
        response.setStatus(422);
        return page(model, form, action);
    }

    private String weighed(
            Model model,
            OfferForm form,
            String act,
            BindingResult errors,
            String action,
            HttpServletResponse response) {
        weights.fill(form, act, new Answers(errors, shop.currency()));
        return errors.hasErrors() ? again(model, form, action, response) : page(model, form, action);
    }

    /** What was typed travels along in the address, and comes back with the price. */
    private static String ask(OfferForm form, @Nullable UUID standing, RedirectAttributes redirect) {
        redirect.addAttribute("codes", form.codes);
        redirect.addAttribute("weights", form.weights);
        redirect.addAttribute("title", form.title);
        redirect.addAttribute("date", form.date);
        redirect.addAttribute("note", form.note);
        redirect.addAttribute("channels", String.join(",", form.channels));
        redirect.addAttribute("offer", standing == null ? "" : standing.toString());
        return "redirect:/asking";
    }

    private String page(Model model, OfferForm form, String action) {
        model.addAttribute("form", form);
        model.addAttribute("action", action);
        model.addAttribute("isNew", action.equals("/offers/new"));
        model.addAttribute("ways", WAYS);
        model.addAttribute("channels", channels.choices());
        model.addAttribute("choosable", pieces.choices(false, form.pieceWords));
        return "selling/offer-form";
    }
}
