package patinary.selling;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;

/**
 * Settles which of two orders gets a piece that was sold twice. The one that gives way keeps its place in the books as an
 * order that was cancelled: what came in and what went back both show, and the piece never left for it.
 */
@Component
class TwiceDesk {

    /** Which order gets the piece. */
    enum Keep {
        /** The one on the form. */
        THIS,
        /** The one that is recorded already. */
        OTHER
    }

    private final SoldTwice clashes;
    private final SaleAnswers reader;
    private final SellingDocuments documents;
    private final Undelivered undelivered;
    private final SalePage sales;
    private final MoneyChoices money;
    private final SellingDays days;
    private final CurrentShop shop;
    private final Refusal refusal;

    TwiceDesk(
            SoldTwice clashes,
            SaleAnswers reader,
            SellingDocuments documents,
            Undelivered undelivered,
            SalePage sales,
            MoneyChoices money,
            SellingDays days,
            CurrentShop shop,
            Refusal refusal) {
        this.clashes = clashes;
        this.reader = reader;
        this.documents = documents;
        this.undelivered = undelivered;
        this.sales = sales;
        this.money = money;
        this.days = days;
        this.shop = shop;
        this.refusal = refusal;
    }

    /** Records both orders as she chose, or tells on the form why that cannot be; never one without the other. */
    boolean settle(SaleForm form, BindingResult errors, UUID id) {
        Optional<SaleContent> sale = reader.read(form, errors, id, null);
        Optional<SoldTwice.Clash> clash = clashes.of(form);
        if (sale.isEmpty() || clash.isEmpty()) {
            return sale.isPresent() && store(errors, () -> documents.record(new Sale(id, sale.get())));
        }
        Answers answers = new Answers(errors, shop.currency());
        Optional<Keep> keep = answers.word("twiceKeep", form.twiceKeep, Keep.class, "selling.error.twice-keep");
        LocalDate day = days.read(answers, "twiceDate", form.twiceDate);
        Amount feeBack =
                answers.optionalAmount("twiceFeeBack", form.twiceFeeBack).orElse(Amount.ZERO);
        UUID place = form.twicePlace.isBlank() ? null : money.read(answers, "twicePlace", form.twicePlace);
        if (errors.hasErrors() || keep.isEmpty()) {
            return false;
        }
        GivingWay way = new GivingWay(day, form.note, feeBack, place);
        return keep.get() == Keep.OTHER
                ? newGivesWay(id, sale.get(), clash.get(), way, answers, errors)
                : otherGivesWay(id, sale.get(), clash.get(), way, answers, errors);
    }

    /** What she said of the order that gives way. */
    private record GivingWay(
            LocalDate day,
            String note,
            Amount feeBack,
            @Nullable UUID place) {}

    private boolean newGivesWay(
            UUID id, SaleContent sale, SoldTwice.Clash clash, GivingWay how, Answers answers, BindingResult errors) {
        SaleContent order = sale.withoutDelivering(clash.pieces());
        Amount owed = clash.own() == null ? Amount.ZERO : clash.own().owed();
        Refund refund = refund(GivingBack.fresh(id, order, clash.pieces()), how, owed, sale.fee(), answers);
        return !errors.hasErrors()
                && store(
                        errors,
                        () -> documents.together(() -> {
                            documents.record(new Sale(id, order));
                            documents.record(refund);
                        }));
    }

    private boolean otherGivesWay(
            UUID id, SaleContent sale, SoldTwice.Clash clash, GivingWay how, Answers answers, BindingResult errors) {
        if (clash.others().size() > 1) {
            answers.wrong("twiceKeep", "selling.error.twice-several");
            return false;
        }
        SoldTwice.Side other = clash.others().get(0);
        if (other.sent() != null) {
            answers.wrong("twiceKeep", "selling.error.twice-sent", other.sent().toString());
            return false;
        }
        UUID otherId = Objects.requireNonNull(other.saleId());
        SaleContent order =
                documents.read(Sale.class, otherId, Sale::content).orElseThrow().withoutDelivering(other.pieces());
        SalePage.RefundRest before = sales.givenBack(otherId);
        Amount feeLeft = order.fee().minus(Amount.of(before.feeMinor()));
        Refund refund = refund(stillPaid(otherId, order, other.pieces(), before), how, other.owed(), feeLeft, answers);
        return !errors.hasErrors()
                && store(
                        errors,
                        () -> documents.together(() -> {
                            undelivered.cancel(refund, other.pieces());
                            documents.record(new Sale(id, sale));
                        }));
    }

    private GivingBack stillPaid(UUID saleId, SaleContent order, List<UUID> pieces, SalePage.RefundRest before) {
        GivingBack fresh = GivingBack.fresh(saleId, order, pieces);
        Map<UUID, SalePage.Before> earlier = sales.before(saleId);
        Map<UUID, Amount> left = new HashMap<>();
        fresh.left()
                .forEach((piece, price) -> left.put(
                        piece,
                        price.minus(Amount.of(earlier.getOrDefault(piece, SalePage.Before.nothing(piece))
                                        .amountMinor()))
                                .max(Amount.ZERO)));
        return new GivingBack(
                saleId,
                order,
                left,
                fresh.restShipping().minus(Amount.of(before.shippingMinor())),
                fresh.restTax().minus(Amount.of(before.taxMinor())));
    }

    /** What is owed is simply no longer owed; where it is owed in part, one entry cannot say both. */
    private Refund refund(GivingBack back, GivingWay how, Amount owed, Amount feeLeft, Answers answers) {
        UUID place = how.place() == null ? back.usualPlace() : how.place();
        RefundContent money = back.on(how.day(), how.note(), how.feeBack(), Way.PLACE, place);
        if (how.feeBack().compareTo(feeLeft) > 0) {
            answers.wrong(
                    "twiceFeeBack",
                    "selling.error.more-than-left",
                    shop.currency().plain(feeLeft));
        }
        if (how.day().isBefore(back.order().date())) {
            answers.wrong(
                    "twiceDate",
                    "selling.error.before-sale",
                    back.order().date().toString());
        }
        if (owed.isPositive() && owed.compareTo(money.total()) < 0) {
            answers.wrong("twiceKeep", "selling.error.twice-partly");
        }
        UUID id = UUID.nameUUIDFromBytes(
                ("given back " + back.saleId() + back.left().keySet()).getBytes(StandardCharsets.UTF_8));
        return new Refund(
                id, owed.isPositive() ? back.on(how.day(), how.note(), how.feeBack(), Way.OWED, null) : money);
    }

    private boolean store(BindingResult errors, Runnable work) {
        try {
            work.run();
            return true;
        } catch (Refused refused) {
            refusal.tell(errors, refused);
            return false;
        }
    }
}
