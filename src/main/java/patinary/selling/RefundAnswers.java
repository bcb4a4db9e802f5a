package patinary.selling;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.supplies.QuantityFmt;
import patinary.supplies.Supply;
import patinary.supplies.SupplyMeasures;
import patinary.web.Answers;
import patinary.web.Ids;

/** Reads the form of a refund. */
@Component
class RefundAnswers {

    private final SalePage sales;
    private final BuyerMoney buyers;
    private final MoneyChoices money;
    private final RetailShelf shelf;
    private final RefundLimits limits;
    private final SellingDays days;
    private final CurrentShop shop;
    private final QuantityFmt words;

    RefundAnswers(
            SalePage sales,
            BuyerMoney buyers,
            MoneyChoices money,
            RetailShelf shelf,
            RefundLimits limits,
            SellingDays days,
            CurrentShop shop,
            QuantityFmt words) {
        this.sales = sales;
        this.buyers = buyers;
        this.money = money;
        this.shelf = shelf;
        this.limits = limits;
        this.days = days;
        this.shop = shop;
        this.words = words;
    }

    Optional<RefundContent> read(
            RefundForm form, Errors errors, UUID saleId, SaleContent sale, List<SalePage.Part> parts) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = days.read(answers, "date", form.date);
        if (date.isBefore(sale.date()) && !date.equals(LocalDate.EPOCH)) {
            answers.wrong("date", "selling.error.before-sale", sale.date().toString());
        }
        List<RefundLine> lines = lines(form, answers, sale, parts, limits.of(saleId, sale, parts));
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

    private List<RefundLine> lines(
            RefundForm form, Answers answers, SaleContent sale, List<SalePage.Part> parts, List<RefundLimit> still) {
        List<RefundLine> lines = new ArrayList<>();
        for (int i = 0; i < form.lines.size(); i++) {
            RefundForm.Line line = form.lines.get(i);
            String at = "lines[" + i + "].";
            int place = parts.stream()
                    .map(part -> String.valueOf(RefundLimits.thing(part)))
                    .toList()
                    .indexOf(line.thing);
            boolean again = form.lines.subList(0, i).stream().anyMatch(other -> other.thing.equals(line.thing));
            if (place < 0 || again) {
                answers.wrong(at + "amount", "selling.error.thing");
                continue;
            }
            Amount amount =
                    upTo(answers, at + "amount", line.amount, still.get(place).left());
            SalePage.Part part = parts.get(place);
            if (part.supplyId() != null) {
                supply(line, at, answers, part.supplyId(), still.get(place), amount, lines);
            } else if (amount.isPositive() || line.comesBack || line.never) {
                checkNever(line, at, answers, sale);
                lines.add(new RefundLine(lines.size() + 1, part.pieceId(), null, null, amount, line.comesBack)
                        .noLongerOwing(line.comesBack ? sale.owedFor(part.pieceId()) : null));
            }
        }
        return lines;
    }

    /** The pieces that the order does not get. */
    static List<UUID> never(RefundForm form) {
        return form.lines.stream()
                .filter(line -> line.never)
                .flatMap(line -> Ids.read(line.thing).stream())
                .toList();
    }

    private static void checkNever(RefundForm.Line line, String at, Answers answers, SaleContent sale) {
        if (line.never && line.comesBack) {
            answers.wrong(at + "never", "selling.error.never-and-back");
        } else if (line.never && sale.postedOn() != null) {
            answers.wrong(
                    at + "never",
                    "selling.error.never-but-sent",
                    sale.postedOn().toString());
        }
    }

    /** Of what was sent back the quantity must be named, and no more of it can be than was sold. */
    private void supply(
            RefundForm.Line line,
            String at,
            Answers answers,
            UUID supply,
            RefundLimit still,
            Amount amount,
            List<RefundLine> lines) {
        boolean isBack = line.back.equals("SHELF");
        boolean isLost = line.back.equals("LOST");
        if (!isBack && !isLost && !line.back.isEmpty()) {
            answers.wrong(at + "back", "selling.error.back");
        }
        if (!amount.isPositive() && !isBack && !isLost) {
            return;
        }
        BigDecimal most = isBack || isLost ? still.leftQuantity() : Objects.requireNonNull(still.sold());
        boolean isAll = line.quantity.isBlank() && !isBack && !isLost;
        BigDecimal quantity = isAll ? most : quantity(line, at + "quantity", answers, most);
        lines.add(new RefundLine(lines.size() + 1, null, supply, quantity, amount, isBack, isLost));
    }

    private BigDecimal quantity(RefundForm.Line line, String field, Answers answers, BigDecimal most) {
        Supply.Facts facts = shelf.find(line.thing).orElseThrow();
        Optional<BigDecimal> quantity =
                answers.quantity(field, line.quantity, facts.dimension(), SupplyMeasures.of(facts));
        if (quantity.filter(read -> read.signum() == 0).isPresent()) {
            answers.wrong(field, "selling.error.quantity");
        } else if (quantity.filter(read -> read.compareTo(most) > 0).isPresent()) {
            answers.wrong(field, "selling.error.more-back", words.say(most, facts.dimension()));
        }
        return quantity.orElse(BigDecimal.ONE);
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
