package patinary.spending;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Answers;

/** What the pages ask and show of one expense. */
@Component
class ExpenseKind extends MoneyKind<Expense, ExpenseForm> {

    ExpenseKind(MoneyDesk desk) {
        super(desk, Expense.class, "expenses");
    }

    @Override
    ExpenseForm blank() {
        return new ExpenseForm();
    }

    @Override
    ExpenseForm form(Expense expense) {
        ExpenseForm form = new ExpenseForm();
        form.category = expense.category();
        form.payee = expense.payee();
        form.placeId = expense.placeId().toString();
        form.amount = plain(expense.amount());
        return form;
    }

    @Override
    Expense read(Facts facts, ExpenseForm form, Answers answers) {
        if (!desk.categories.has(form.category)) {
            answers.wrong("category", "spending.error.category");
        }
        return new Expense(
                facts.id(),
                facts.date(),
                facts.note(),
                form.category,
                answers.note("payee", form.payee, 200),
                desk.place(answers, "placeId", form.placeId),
                amount(answers, form.amount));
    }

    @Override
    void rewrite(Expense stored, Expense typed) {
        stored.rewrite(typed.date(), typed.note(), typed.category(), typed.payee(), typed.placeId(), typed.amount());
    }

    @Override
    void furnish(Model model, ExpenseForm form) {
        model.addAttribute("categories", desk.categories.choices());
    }
}
