package patinary.spending;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.spending.OwnerMoney.Direction;
import patinary.web.Answers;
import patinary.web.Choice;

/** What the pages ask and show of money the owner put in or took out. */
@Component
class OwnerMoneyKind extends MoneyKind<OwnerMoney, OwnerMoneyForm> {

    OwnerMoneyKind(MoneyDesk desk) {
        super(desk, OwnerMoney.class, "owner-money");
    }

    @Override
    OwnerMoneyForm blank() {
        return new OwnerMoneyForm();
    }

    @Override
    void prefill(OwnerMoneyForm form, Map<String, String> asked) {
        form.placeId = asked.getOrDefault("placeId", "");
    }

    @Override
    OwnerMoneyForm form(OwnerMoney money) {
        OwnerMoneyForm form = new OwnerMoneyForm();
        form.direction = money.direction().name();
        form.placeId = money.placeId().toString();
        form.amount = plain(money.amount());
        return form;
    }

    @Override
    OwnerMoney read(Facts facts, OwnerMoneyForm form, Answers answers) {
        return new OwnerMoney(
                facts.id(),
                facts.date(),
                facts.note(),
                answers.word("direction", form.direction, Direction.class, "spending.error.direction")
                        .orElse(Direction.IN),
                desk.place(answers, "placeId", form.placeId),
                amount(answers, form.amount));
    }

    @Override
    void rewrite(OwnerMoney stored, OwnerMoney typed) {
        stored.rewrite(typed.date(), typed.note(), typed.direction(), typed.placeId(), typed.amount());
    }

    @Override
    void furnish(Model model, OwnerMoneyForm form) {
        model.addAttribute(
                "directions",
                List.of(
                        Choice.said("IN", "spending.owner.direction.IN"),
                        Choice.said("OUT", "spending.owner.direction.OUT")));
    }
}
