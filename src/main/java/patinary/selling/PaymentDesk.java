package patinary.selling;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/** Takes in money from buyers. */
@Component
class PaymentDesk {

    private final SellingDocuments documents;
    private final MoneyChoices money;
    private final BuyerMoney buyers;
    private final SellingDays days;
    private final CurrentShop shop;
    private final Refusal refusal;

    PaymentDesk(
            SellingDocuments documents,
            MoneyChoices money,
            BuyerMoney buyers,
            SellingDays days,
            CurrentShop shop,
            Refusal refusal) {
        this.documents = documents;
        this.money = money;
        this.buyers = buyers;
        this.days = days;
        this.shop = shop;
        this.refusal = refusal;
    }

    PaymentForm blank() {
        PaymentForm form = new PaymentForm();
        form.id = UUID.randomUUID().toString();
        form.date = days.today();
        return form;
    }

    /** What was sold on credit cannot be paid before it was sold, nor more than is owed; a deposit names its buyer. */
    boolean take(PaymentForm form, Errors errors, @Nullable UUID sale) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = days.read(answers, "date", form.date);
        UUID place = money.read(answers, "place", form.place);
        Amount amount = answers.amount("amount", form.amount);
        if (!answers.anyWrong() && amount.isZero()) {
            answers.wrong("amount", "selling.error.zero");
        }
        String buyer = sale == null
                ? answers.text("buyer", form.buyer, 200, "selling.error.buyer")
                : answers.note("buyer", form.buyer, 200);
        if (sale != null) {
            checkSale(answers, sale, date, amount, FormId.read(form.id));
        }
        String note = answers.note("note", form.note, 2000);
        if (errors.hasErrors()) {
            return false;
        }
        try {
            documents.record(new BuyerPayment(FormId.read(form.id), date, note, sale, buyer, place, amount));
        } catch (Refused refused) {
            refusal.tell(errors, refused);
        }
        return !errors.hasErrors();
    }

    private void checkSale(Answers answers, UUID sale, LocalDate date, Amount amount, UUID own) {
        boolean recorded =
                documents.read(BuyerPayment.class, own, BuyerPayment::id).isPresent();
        if (!recorded && amount.compareTo(buyers.owed(sale)) > 0) {
            answers.wrong("amount", "selling.error.not-owed");
        }
        documents
                .read(Sale.class, sale, Sale::date)
                .filter(date::isBefore)
                .filter(sold -> !date.equals(LocalDate.EPOCH))
                .ifPresent(sold -> answers.wrong("date", "selling.error.before-sale", sold.toString()));
    }
}
