package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Reads the form of a channel. */
@Component
class ChannelAnswers {

    private static final int NAME = 120;

    private final ChannelBook channels;
    private final MoneyChoices money;
    private final CurrentShop shop;

    ChannelAnswers(ChannelBook channels, MoneyChoices money, CurrentShop shop) {
        this.channels = channels;
        this.money = money;
        this.shop = shop;
    }

    ChannelForm form(ChannelFacts channel) {
        ChannelForm form = new ChannelForm();
        form.id = channel.id().toString();
        form.version = channel.version();
        form.name = channel.name();
        form.passesTax = channel.passesTax();
        form.place = channel.moneyPlaceId().toString();
        for (FeeRule rule : channel.fees()) {
            ChannelForm.Rule row = new ChannelForm.Rule();
            row.validFrom = rule.validFrom().toString();
            row.percent = rule.percent().value().stripTrailingZeros().toPlainString();
            row.fixed = shop.currency().plain(rule.fixed());
            form.rules.add(row);
        }
        return form;
    }

    /** There is always one empty row for another rule. */
    void roomForMore(ChannelForm form) {
        if (form.rules.isEmpty() || !form.rules.get(form.rules.size() - 1).isEmpty()) {
            form.rules.add(new ChannelForm.Rule());
        }
    }

    ChannelBook.Kept read(ChannelForm form, Errors errors, UUID id) {
        Answers answers = new Answers(errors, shop.currency());
        String name = answers.text("name", form.name, NAME, "selling.error.channel-name");
        if (channels.nameTaken(name, id)) {
            answers.wrong("name", "selling.error.channel-taken");
        }
        String newPlace = answers.note("newPlace", form.newPlace, NAME);
        UUID place = new UUID(0, 0);
        if (newPlace.isEmpty()) {
            place = money.read(answers, "place", form.place);
        } else if (channels.placeNameTaken(newPlace)) {
            answers.wrong("newPlace", "selling.error.place-taken");
        }
        return new ChannelBook.Kept(name, place, newPlace, form.passesTax, rules(form, answers));
    }

    private static List<FeeRule> rules(ChannelForm form, Answers answers) {
        List<FeeRule> rules = new ArrayList<>();
        Set<LocalDate> days = new HashSet<>();
        for (int i = 0; i < form.rules.size(); i++) {
            ChannelForm.Rule row = form.rules.get(i);
            if (row.isEmpty()) {
                continue;
            }
            String at = "rules[" + i + "].";
            LocalDate from = answers.date(at + "validFrom", row.validFrom);
            if (!days.add(from)) {
                answers.wrong(at + "validFrom", "selling.error.rule-twice");
            }
            Percent percent = answers.percent(at + "percent", row.percent).orElse(Percent.ZERO);
            Amount fixed = answers.optionalAmount(at + "fixed", row.fixed).orElse(Amount.ZERO);
            rules.add(new FeeRule(from, percent, fixed));
        }
        return rules;
    }
}
