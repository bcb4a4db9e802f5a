package patinary.spending;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Answers;

/** What the pages ask and show of income that is no sale. */
@Component
class OtherIncomeKind extends MoneyKind<OtherIncome, OtherIncomeForm> {

    OtherIncomeKind(MoneyDesk desk) {
        super(desk, OtherIncome.class, "other-income");
    }

    @Override
    OtherIncomeForm blank() {
        return new OtherIncomeForm();
    }

    @Override
    OtherIncomeForm form(OtherIncome income) {
        OtherIncomeForm form = new OtherIncomeForm();
        form.category = income.category();
        form.payer = income.payer();
        form.placeId = income.placeId().toString();
        form.amount = plain(income.amount());
        return form;
    }

    @Override
    OtherIncome read(Facts facts, OtherIncomeForm form, Answers answers) {
        return new OtherIncome(
                facts.id(),
                facts.date(),
                facts.note(),
                answers.text("category", form.category, 40, "spending.error.income-category"),
                answers.note("payer", form.payer, 200),
                desk.place(answers, "placeId", form.placeId),
                amount(answers, form.amount));
    }

    @Override
    void rewrite(OtherIncome stored, OtherIncome typed) {
        stored.rewrite(typed.date(), typed.note(), typed.category(), typed.payer(), typed.placeId(), typed.amount());
    }

    @Override
    void furnish(Model model, OtherIncomeForm form) {
        // Nothing but the money places, which every page has.
    }
}
