package patinary.selling;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.web.Choice;
import patinary.web.NotFound;
import patinary.web.Notice;

/** The channels: where she sells, and what each keeps. */
@Controller
@RequestMapping("/channels")
class ChannelController {

    /** Price and shipping is what an empty answer means; a rule that says so outright is the same rule. */
    private static final List<Choice> BASES = List.of(
            Choice.said("PRICE", "selling.fee.base.PRICE"),
            Choice.said("ALL_WITH_TAX", "selling.fee.base.ALL_WITH_TAX"));

    private final ChannelBook channels;
    private final ChannelAnswers reader;
    private final MoneyChoices money;
    private final FeeTrial trial;

    ChannelController(ChannelBook channels, ChannelAnswers reader, MoneyChoices money, FeeTrial trial) {
        this.channels = channels;
        this.reader = reader;
        this.money = money;
        this.trial = trial;
    }

    @GetMapping
    String list(Model model) {
        model.addAttribute("rows", channels.all());
        return "selling/channels";
    }

    @GetMapping("/new")
    String blank(Model model) {
        ChannelForm form = new ChannelForm();
        form.id = UUID.randomUUID().toString();
        return page(model, form, "/channels/new");
    }

    @GetMapping("/{id}")
    String edit(@PathVariable UUID id, @ModelAttribute("trial") FeeTrialForm tried, BindingResult errors, Model model) {
        ChannelFacts channel = channels.find(id).orElseThrow(() -> new NotFound("Channel " + id));
        trial.fill(tried, id);
        model.addAttribute("result", trial.result(tried, channel, errors));
        model.addAttribute("id", id);
        return page(model, reader.form(channel), "/channels/" + id);
    }

    @PostMapping("/new")
    String add(
            @ModelAttribute("form") ChannelForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        UUID id = FormId.read(form.id);
        ChannelBook.Kept kept = reader.read(form, errors, id);
        if (errors.hasErrors()) {
            return again(model, form, "/channels/new", response);
        }
        channels.add(id, kept);
        Notice.next(redirect, "selling.channel.saved", kept.name());
        return "redirect:/channels";
    }

    @PostMapping("/{id}")
    String change(
            @PathVariable UUID id,
            @ModelAttribute("form") ChannelForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        ChannelBook.Kept kept = reader.read(form, errors, id);
        if (errors.hasErrors()) {
            return again(model, form, "/channels/" + id, response);
        }
        channels.change(id, form.version, kept);
        Notice.next(redirect, "selling.channel.saved", kept.name());
        return "redirect:/channels";
    }

    private String again(Model model, ChannelForm form, String action, HttpServletResponse response) {
        response.setStatus(422);
        return page(model, form, action);
    }

    private String page(Model model, ChannelForm form, String action) {
        reader.roomForMore(form);
        model.addAttribute("form", form);
        model.addAttribute("action", action);
        model.addAttribute("bases", BASES);
        model.addAttribute("places", money.choices());
        return "selling/channel";
    }
}
