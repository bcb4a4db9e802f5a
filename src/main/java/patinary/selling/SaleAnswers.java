package patinary.selling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.Errors;
import patinary.ledger.Account;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.web.Answers;
import patinary.web.Ids;

/** Reads the form of a sale. */
@Component
class SaleAnswers {

    private static final int BUYER = 200;
    private static final int ORDER = 80;
    private static final int NOTE = 2000;

    private final SaleLineAnswers lines;
    private final WrapAnswers wraps;
    private final ChannelBook channels;
    private final MoneyChoices money;
    private final BuyerMoney buyers;
    private final SaleTax taxes;
    private final SaleDiscount discounts;
    private final SellingDays days;
    private final OwnerShares owners;
    private final CurrentShop shop;

    SaleAnswers(
            SaleLineAnswers lines,
            WrapAnswers wraps,
            ChannelBook channels,
            MoneyChoices money,
            BuyerMoney buyers,
            SaleTax taxes,
            SaleDiscount discounts,
            SellingDays days,
            OwnerShares owners,
            CurrentShop shop) {
        this.lines = lines;
        this.wraps = wraps;
        this.channels = channels;
        this.money = money;
        this.buyers = buyers;
        this.taxes = taxes;
        this.discounts = discounts;
        this.days = days;
        this.owners = owners;
        this.shop = shop;
    }

    /**
     * Reads everything; nothing where an answer is wrong.
     *
     * @param id the sale's own
     * @param before what it said until now, or null where it is new
     */
    Optional<SaleContent> read(SaleForm form, Errors errors, UUID id, @Nullable SaleContent before) {
        Answers answers = new Answers(errors, shop.currency());
        LocalDate date = days.read(answers, "date", form.date);
        Optional<ChannelFacts> channel = channel(form, answers);
        SaleLineAnswers.Read read = lines.read(form, answers, before);
        Amount nets = read.lines().stream().map(SaleLine::net).collect(Amount.sum());
        SaleDiscount.Read taken = discounts.read(
                form,
                answers,
                date,
                nets,
                before == null ? null : before.extras().discountCode());
        Amount discount = taken.amount();
        Amount tip = amount(answers, "tip", form.tip);
        Amount shipping = amount(answers, "shipping", form.shipping);
        boolean passed = SaleTax.isPassed(form, channel);
        Optional<UUID> taxPlace = taxes.place(form, channel, answers);
        Amount tax = answers.optionalAmount("tax", form.tax)
                .orElseGet(() -> passed
                        ? Amount.ZERO
                        : taxes.proposed(taxPlace, date, new Charged(nets.minus(discount), shipping, Amount.ZERO)));
        Optional<Amount> typedFee = answers.optionalAmount("fee", form.fee);
        String buyer = answers.note("buyer", form.buyer, BUYER);
        String order = answers.note("order", form.order, ORDER);
        String note = answers.note("note", form.note, NOTE);
        List<Wrap> packed = wraps.read(form.wraps, answers, date);
        if (answers.anyWrong() || channel.isEmpty()) {
            return Optional.empty();
        }
        // A fee on all that the buyer pays is also taken of the tip.
        Amount fee = typedFee.orElseGet(
                () -> ruledFee(channel.get(), date, new Charged(nets.minus(discount), shipping, tax.plus(tip))));
        SaleContent bare = owners.on(new SaleContent(
                date,
                note,
                channel.get().id(),
                buyer,
                order,
                discount,
                shipping,
                tax,
                passed,
                fee,
                channel.get().moneyPlaceId(),
                before == null ? null : before.postedOn(),
                read.lines(),
                read.pieces(),
                List.of(),
                packed));
        SaleContent unpaid = bare.with(new SaleExtras(taken.code(), tip.isZero() ? null : tip));
        SaleContent sale = unpaid.paidBy(tenders(form, answers, unpaid.sums().due(), channel.get(), id))
                .withoutDelivering(undelivered(before))
                .taxedIn(taxPlace.orElse(null));
        return answers.anyWrong() ? Optional.empty() : Optional.of(sale);
    }

    /** Changing the words of an order does not deliver what it never got. */
    private static List<UUID> undelivered(@Nullable SaleContent before) {
        return before == null
                ? List.of()
                : before.undelivered().stream().map(SalePiece::pieceId).toList();
    }

    static Amount ruledFee(ChannelFacts channel, LocalDate date, Charged charged) {
        return channel.ruleOn(date).map(rule -> rule.on(charged)).orElse(Amount.ZERO);
    }

    private Optional<ChannelFacts> channel(SaleForm form, Answers answers) {
        Optional<ChannelFacts> channel = Ids.read(form.channel).flatMap(channels::find);
        if (channel.isEmpty()) {
            answers.wrong("channel", "selling.error.no-channel");
        }
        return channel;
    }

    /** What is not paid ahead, by credit, or owed goes into a money place. */
    private List<Tender> tenders(SaleForm form, Answers answers, Amount due, ChannelFacts channel, UUID id) {
        Amount deposit = held(answers, "deposit", form.deposit, Account.CUSTOMER_DEPOSITS, id);
        Amount credit = held(answers, "credit", form.credit, Account.STORE_CREDIT_GIVEN, id);
        Amount owed = amount(answers, "owed", form.owed);
        Amount rest = due.minus(deposit).minus(credit).minus(owed);
        if (rest.isNegative()) {
            answers.wrong("owed", "selling.error.overpaid");
        }
        UUID place = form.place.isBlank() ? channel.moneyPlaceId() : money.read(answers, "place", form.place);
        List<Tender> tenders = new ArrayList<>();
        add(tenders, Way.PLACE, place, rest);
        add(tenders, Way.DEPOSIT, null, deposit);
        add(tenders, Way.STORE_CREDIT, null, credit);
        add(tenders, Way.OWED, null, owed);
        return tenders;
    }

    private Amount held(Answers answers, String field, String typed, Account account, UUID id) {
        Amount used = amount(answers, field, typed);
        if (used.isPositive() && used.compareTo(buyers.held(account, id)) > 0) {
            answers.wrong(field, "selling.error.not-held");
        }
        return used;
    }

    private static void add(List<Tender> tenders, Way way, @Nullable UUID place, Amount amount) {
        if (amount.isPositive()) {
            tenders.add(new Tender(tenders.size() + 1, way, place, amount));
        }
    }

    private static Amount amount(Answers answers, String field, String typed) {
        return answers.optionalAmount(field, typed).orElse(Amount.ZERO);
    }
}
