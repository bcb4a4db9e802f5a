package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import patinary.web.Answers;

/** Pages of income that is no sale. */
@Controller
@RequestMapping("/other-income")
class OtherIncomeController extends MoneyController<OtherIncome, OtherIncomeForm> {

    OtherIncomeController(MoneyDesk desk) {
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
