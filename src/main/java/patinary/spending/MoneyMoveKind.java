package patinary.spending;

import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Answers;

/** What the pages ask and show of money carried from one place to another. */
@Component
class MoneyMoveKind extends MoneyKind<MoneyMove, MoneyMoveForm> {

    MoneyMoveKind(MoneyDesk desk) {
        super(desk, MoneyMove.class, "money-moves");
    }

    @Override
    MoneyMoveForm blank() {
        return new MoneyMoveForm();
    }

    /** The page of the cash box asks with the place that a float goes to, or that takings come from. */
    @Override
    void prefill(MoneyMoveForm form, Map<String, String> asked) {
        form.fromPlaceId = asked.getOrDefault("fromPlaceId", "");
        form.toPlaceId = asked.getOrDefault("toPlaceId", "");
    }

    @Override
    MoneyMoveForm form(MoneyMove move) {
        MoneyMoveForm form = new MoneyMoveForm();
        form.fromPlaceId = move.fromPlaceId().toString();
        form.toPlaceId = move.toPlaceId().toString();
        form.amount = plain(move.amount());
        return form;
    }

    @Override
    MoneyMove read(Facts facts, MoneyMoveForm form, Answers answers) {
        UUID from = desk.place(answers, "fromPlaceId", form.fromPlaceId);
        UUID to = desk.place(answers, "toPlaceId", form.toPlaceId);
        if (from.equals(to) && !form.toPlaceId.isBlank()) {
            answers.wrong("toPlaceId", "spending.error.same-place");
        }
        return new MoneyMove(facts.id(), facts.date(), facts.note(), from, to, amount(answers, form.amount));
    }

    @Override
    void rewrite(MoneyMove stored, MoneyMove typed) {
        stored.rewrite(typed.date(), typed.note(), typed.fromPlaceId(), typed.toPlaceId(), typed.amount());
    }

    @Override
    void furnish(Model model, MoneyMoveForm form) {
        // Nothing but the money places, which every page has.
    }
}
