package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.supplies.SupplyMeasures;
import patinary.web.Answers;

/** Reads the form of a refund. */
@Component
class RefundAnswers {

    private final SalePage sales;
    private final BuyerMoney buyers;
    private final MoneyChoices money;
    private final RetailShelf shelf;
    private final SellingDays days;
    private final CurrentShop shop;

    RefundAnswers(
            SalePage sales,
            BuyerMoney buyers,
            MoneyChoices money,
            RetailShelf shelf,
            SellingDays days,
            CurrentShop shop) {
        this.sales = sales;
        this.buyers = buyers;
        this.money = money;
        this.shelf = shelf;
        this.days = days;
        this.shop = shop;
    }

    RefundForm blank(SaleContent sale, List<SalePage.Part> parts) {
        RefundForm form = new RefundForm();
        form.id = UUID.randomUUID().toString();
        form.date = days.today();
        form.place = String.valueOf(sale.feePlaceId());
        for (SalePage.Part part : parts) {
            RefundForm.Line line = new RefundForm.Line();
            line.thing = String.valueOf(thing(part));
            form.lines.add(line);
        }
        return form;
    }

    static @Nullable UUID thing(SalePage.Part part) {
        return part.pieceId() == null ? part.supplyId() : part.pieceId();
    }

    Optional<RefundContent> read(
            RefundForm form, Errors errors, UUID saleId, SaleContent sale, List<SalePage.Part> parts) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = days.read(answers, "date", form.date);
        if (date.isBefore(sale.date()) && !date.equals(LocalDate.EPOCH)) {
            answers.wrong("date", "selling.error.before-sale", sale.date().toString());
        }
        List<RefundLine> lines = lines(form, answers, saleId, parts);
        SalePage.RefundRest before = sales.givenBack(saleId);
        Amount shipping =
                upTo(answers, "shipping", form.shipping, sale.shipping().minus(Amount.of(before.shippingMinor())));
        Amount collected = sale.taxPassed() ? Amount.ZERO : sale.tax();
        Amount tax = upTo(answers, "tax", form.tax, collected.minus(Amount.of(before.taxMinor())));
        Amount feeBack = upTo(answers, "feeBack", form.feeBack, sale.fee().minus(Amount.of(before.feeMinor())));
        Way way = way(form, answers);
        UUID place = way == Way.PLACE ? money.read(answers, "place", form.place) : null;
        RefundContent refund = new RefundContent(
                date,
                answers.note("note", form.note, 2000),
                saleId,
                way,
                place,
                shipping,
                tax,
                feeBack,
                sale.feePlaceId(),
                lines);
        check(refund, answers, saleId);
        return answers.anyWrong() ? Optional.empty() : Optional.of(refund);
    }

    private void check(RefundContent refund, Answers answers, UUID saleId) {
        boolean something = refund.total().isPositive()
                || refund.feeBack().isPositive()
                || !refund.lines().isEmpty();
        if (!something && !answers.anyWrong()) {
            answers.wrong("", "selling.error.empty-refund");
        }
        if (refund.way() == Way.OWED && refund.total().compareTo(buyers.owed(saleId)) > 0) {
            answers.wrong("way", "selling.error.not-owed");
        }
    }

    private static Way way(RefundForm form, Answers answers) {
        return answers.word("way", form.way, Way.class, "selling.error.way")
                .filter(way -> {
                    boolean possible = way == Way.PLACE || way == Way.OWED || way == Way.STORE_CREDIT;
                    if (!possible) {
                        answers.wrong("way", "selling.error.way");
                    }
                    return possible;
                })
                .orElse(Way.PLACE);
    }

    private List<RefundLine> lines(RefundForm form, Answers answers, UUID saleId, List<SalePage.Part> parts) {
        List<RefundLine> lines = new ArrayList<>();
        for (int i = 0; i < form.lines.size(); i++) {
            RefundForm.Line line = form.lines.get(i);
            String at = "lines[" + i + "].";
            Optional<SalePage.Part> part = parts.stream()
                    .filter(one -> line.thing.equals(String.valueOf(thing(one))))
                    .findFirst();
            boolean again = form.lines.subList(0, i).stream().anyMatch(other -> other.thing.equals(line.thing));
            if (part.isEmpty() || again) {
                answers.wrong(at + "amount", "selling.error.thing");
                continue;
            }
            UUID thing = UUID.fromString(line.thing);
            Amount left = part.get().figures().price().minus(sales.givenBack(saleId, thing));
            Amount amount = upTo(answers, at + "amount", line.amount, left);
            if (amount.isPositive() || line.comesBack) {
                lines.add(line(line, at, answers, part.get(), amount, lines.size() + 1));
            }
        }
        return lines;
    }

    private RefundLine line(
            RefundForm.Line line, String at, Answers answers, SalePage.Part part, Amount amount, int number) {
        BigDecimal quantity = null;
        if (part.supplyId() != null) {
            quantity = quantity(line, at, answers, part.supplyId().toString());
        }
        return new RefundLine(number, part.pieceId(), part.supplyId(), quantity, amount, line.comesBack);
    }

    /** How much of the supply the refund is for; it must be named, as it may come back. */
    private BigDecimal quantity(RefundForm.Line line, String at, Answers answers, String supply) {
        BigDecimal quantity = shelf.find(supply)
                .flatMap(facts ->
                        answers.quantity(at + "quantity", line.quantity, facts.dimension(), SupplyMeasures.of(facts)))
                .orElse(BigDecimal.ONE);
        if (quantity.signum() == 0) {
            answers.wrong(at + "quantity", "selling.error.quantity");
        }
        return quantity;
    }

    private Amount upTo(Answers answers, String field, String typed, Amount most) {
        Amount amount = answers.optionalAmount(field, typed).orElse(Amount.ZERO);
        if (amount.compareTo(most.max(Amount.ZERO)) > 0) {
            answers.wrong(field, "selling.error.more-than-left", shop.currency().plain(most.max(Amount.ZERO)));
            return Amount.ZERO;
        }
        return amount;
    }
}
