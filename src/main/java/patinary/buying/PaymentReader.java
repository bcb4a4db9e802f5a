package patinary.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import patinary.buying.ReceiptForm.PaymentForm;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.MoneyPlaces;
import patinary.web.Answers;

/** Reads how a receipt was paid: further payments as typed, and the rest of the total in one way. */
@Component
class PaymentReader {

    private final MoneyPlaces places;

    PaymentReader(MoneyPlaces places) {
        this.places = places;
    }

    List<Tender> read(Answers answers, ReceiptForm form, Amount total, boolean hasSource) {
        List<Tender> payments = new ArrayList<>();
        for (int i = 0; i < form.payments.size(); i++) {
            if (!form.payments.get(i).isEmpty()) {
                payment(answers, "payments[" + i + "].", form.payments.get(i), payments, hasSource);
            }
        }
        Amount rest = total.minus(payments.stream().map(Tender::amount).collect(Amount.sum()));
        if (rest.isNegative()) {
            answers.wrong("paidWith", "buying.error.paid-too-much");
        } else if (rest.isPositive()) {
            with(answers, "paidWith", form.paidWith, hasSource)
                    .ifPresent(way -> payments.add(way.tender(payments.size() + 1, rest)));
        }
        return List.copyOf(payments);
    }

    private void payment(Answers answers, String at, PaymentForm form, List<Tender> payments, boolean hasSource) {
        Amount amount = answers.amount(at + "amount", form.amount);
        Optional<PaidWith> with = with(answers, at + "with", form.with, hasSource);
        if (with.isPresent() && amount.isPositive()) {
            payments.add(with.get().tender(payments.size() + 1, amount));
        }
    }

    private Optional<PaidWith> with(Answers answers, String field, String answer, boolean hasSource) {
        Optional<PaidWith> with = PaidWith.read(answer, places.findAllByOrderByName());
        if (with.isEmpty()) {
            answers.wrong(field, "buying.error.paid-with");
        } else if (with.get().way() == Way.STORE_CREDIT && !hasSource) {
            answers.wrong(field, "buying.error.credit-source");
        }
        return with;
    }
}
