package patinary.spending;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.money.Amount;
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
        form.fee = income.fee().isZero() ? "" : plain(income.fee());
        return form;
    }

    @Override
    OtherIncome read(Facts facts, OtherIncomeForm form, Answers answers) {
        Amount amount = amount(answers, form.amount);
        Amount fee = answers.optionalAmount("fee", form.fee).orElse(Amount.ZERO);
        if (fee.compareTo(amount) > 0 && !answers.anyWrong()) {
            answers.wrong("fee", "spending.error.income-fee");
        }
        return new OtherIncome(
                        facts.id(),
                        facts.date(),
                        facts.note(),
                        answers.text("category", form.category, 40, "spending.error.income-category"),
                        answers.note("payer", form.payer, 200),
                        desk.place(answers, "placeId", form.placeId),
                        amount)
                .keeping(fee);
    }

    @Override
    void rewrite(OtherIncome stored, OtherIncome typed) {
        stored.rewrite(typed.date(), typed.note(), typed.category(), typed.payer(), typed.placeId(), typed.amount());
        stored.keeping(typed.fee());
    }

    @Override
    void furnish(Model model, OtherIncomeForm form) {
        model.addAttribute("usual", desk.book.incomeCategories());
    }
}
