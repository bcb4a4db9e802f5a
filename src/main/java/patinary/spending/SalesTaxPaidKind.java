package patinary.spending;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.web.Answers;

/** What the pages ask and show of sales tax paid over; they show how much is due by the books. */
@Component
class SalesTaxPaidKind extends MoneyKind<SalesTaxPaid, SalesTaxPaidForm> {

    private final MoneyReports reports;

    SalesTaxPaidKind(MoneyDesk desk, MoneyReports reports) {
        super(desk, SalesTaxPaid.class, "sales-tax-paid");
        this.reports = reports;
    }

    @Override
    SalesTaxPaidForm blank() {
        return new SalesTaxPaidForm();
    }

    @Override
    SalesTaxPaidForm form(SalesTaxPaid paid) {
        SalesTaxPaidForm form = new SalesTaxPaidForm();
        form.period = paid.period();
        form.placeId = paid.placeId().toString();
        form.amount = plain(paid.amount());
        return form;
    }

    @Override
    SalesTaxPaid read(Facts facts, SalesTaxPaidForm form, Answers answers) {
        return new SalesTaxPaid(
                facts.id(),
                facts.date(),
                facts.note(),
                answers.note("period", form.period, 40),
                desk.place(answers, "placeId", form.placeId),
                amount(answers, form.amount));
    }

    @Override
    void rewrite(SalesTaxPaid stored, SalesTaxPaid typed) {
        stored.rewrite(typed.date(), typed.note(), typed.period(), typed.placeId(), typed.amount());
    }

    @Override
    void furnish(Model model, SalesTaxPaidForm form) {
        model.addAttribute("taxDue", reports.salesTaxDue());
    }
}
