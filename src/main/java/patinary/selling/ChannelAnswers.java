package patinary.selling;

import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Reads the form of a channel. */
@Component
class ChannelAnswers {

    private static final int NAME = 120;

    private final ChannelBook channels;
    private final MoneyChoices money;
    private final FeeAnswers rules;
    private final CurrentShop shop;

    ChannelAnswers(ChannelBook channels, MoneyChoices money, FeeAnswers rules, CurrentShop shop) {
        this.channels = channels;
        this.money = money;
        this.rules = rules;
        this.shop = shop;
    }

    ChannelForm form(ChannelFacts channel) {
        ChannelForm form = new ChannelForm();
        form.id = channel.id().toString();
        form.version = channel.version();
        form.name = channel.name();
        form.passesTax = channel.passesTax();
        form.place = channel.moneyPlaceId().toString();
        channel.fees().forEach(rule -> form.rules.add(rules.row(rule)));
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
        return new ChannelBook.Kept(name, place, newPlace, form.passesTax, rules.read(form.rules, answers));
    }
}
