package patinary.spending;

import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import patinary.money.Amount;
import patinary.salestax.TaxPlaces;
import patinary.web.Answers;

/** What the pages ask and show of sales tax paid over; they show how much is due by the books. */
@Component
class SalesTaxPaidKind extends MoneyKind<SalesTaxPaid, SalesTaxPaidForm> {

    private final MoneyReports reports;
    private final TaxPlaces places;

    SalesTaxPaidKind(MoneyDesk desk, MoneyReports reports, TaxPlaces places) {
        super(desk, SalesTaxPaid.class, "sales-tax-paid");
        this.reports = reports;
        this.places = places;
    }

    @Override
    SalesTaxPaidForm blank() {
        return new SalesTaxPaidForm();
    }

    @Override
    void prefill(SalesTaxPaidForm form, Map<String, String> asked) {
        form.taxPlace = asked.getOrDefault("taxPlace", "");
        form.from = asked.getOrDefault("from", "");
        form.to = asked.getOrDefault("to", "");
        form.amount = asked.getOrDefault("amount", "");
    }

    @Override
    SalesTaxPaidForm form(SalesTaxPaid paid) {
        SalesTaxPaidForm form = new SalesTaxPaidForm();
        form.period = paid.period();
        form.placeId = paid.placeId().toString();
        form.amount = plain(paid.amount());
        SalesTaxPaid.Covered covered = paid.covered();
        form.taxPlace = text(covered.taxPlaceId());
        form.from = text(covered.from());
        form.to = text(covered.to());
        form.allowance = covered.allowance().isZero() ? "" : plain(covered.allowance());
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
                amount(answers, form.amount),
                covered(form, answers));
    }

    private SalesTaxPaid.Covered covered(SalesTaxPaidForm form, Answers answers) {
        UUID place = answers.optionalId("taxPlace", form.taxPlace, "salestax.error.unknown")
                .orElse(null);
        if (place != null && places.find(place).isEmpty()) {
            answers.wrong("taxPlace", "salestax.error.unknown");
        }
        LocalDate from = answers.optionalDate("from", form.from).orElse(null);
        LocalDate to = answers.optionalDate("to", form.to).orElse(null);
        if (form.from.isBlank() != form.to.isBlank()) {
            answers.wrong(form.from.isBlank() ? "from" : "to", "spending.error.tax-both-days");
        }
        if (from != null && to != null && to.isBefore(from)) {
            answers.wrong("to", "spending.error.tax-days");
        }
        Amount allowance = answers.optionalAmount("allowance", form.allowance).orElse(Amount.ZERO);
        return new SalesTaxPaid.Covered(place, from, to, allowance);
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    @Override
    void rewrite(SalesTaxPaid stored, SalesTaxPaid typed) {
        stored.rewrite(typed.date(), typed.note(), typed.period(), typed.placeId(), typed.amount(), typed.covered());
    }

    @Override
    void furnish(Model model, SalesTaxPaidForm form) {
        model.addAttribute("taxDue", reports.salesTaxDue());
        model.addAttribute("taxPlaces", places.choices());
    }
}
