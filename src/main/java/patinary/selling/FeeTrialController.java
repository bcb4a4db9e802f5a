package patinary.selling;

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
import patinary.web.NotFound;
import patinary.web.Notice;

/** A table of prices and what remains of each, to print; and what is usual on a channel, kept. */
@Controller
@RequestMapping("/channels/{id}")
class FeeTrialController {

    private final ChannelBook channels;
    private final FeeTrial trial;
    private final ChannelTerms usual;

    FeeTrialController(ChannelBook channels, FeeTrial trial, ChannelTerms usual) {
        this.channels = channels;
        this.trial = trial;
        this.usual = usual;
    }

    @GetMapping("/prices")
    String prices(@PathVariable UUID id, @ModelAttribute("form") FeeTrialForm form, BindingResult errors, Model model) {
        ChannelFacts channel = find(id);
        trial.fill(form, id);
        model.addAttribute("rows", trial.table(form, channel, errors));
        model.addAttribute("channel", channel);
        model.addAttribute("id", id);
        return "selling/channel-prices";
    }

    @PostMapping("/usual")
    String keep(
            @PathVariable UUID id,
            @ModelAttribute("trial") FeeTrialForm form,
            BindingResult errors,
            RedirectAttributes redirect) {
        ChannelFacts channel = find(id);
        UsualTerms terms = trial.terms(form, errors);
        if (errors.hasErrors()) {
            // The values come from a page that has read them once; whatever else was sent is not kept.
            Notice.next(redirect, "selling.trial.not-kept");
        } else {
            usual.keep(id, terms);
            Notice.next(redirect, "selling.trial.kept", channel.name());
        }
        return "redirect:/channels/" + id;
    }

    private ChannelFacts find(UUID id) {
        return channels.find(id).orElseThrow(() -> new NotFound("Channel " + id));
    }
}
