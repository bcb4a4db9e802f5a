package patinary.selling;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.validation.DirectFieldBindingResult;
import patinary.ledger.Problem;
import patinary.ledger.Refusal;
import patinary.ledger.Refused;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.shop.MoneyPlace;
import patinary.web.Answers;
import patinary.web.Fmt;
import patinary.web.Ids;

/** Takes the money at the stall: a short form for what the long form of a sale says, read by the same rules. */
@Component
class StallDesk {

    /** What was sold, and the change that goes with it where the buyer's cash was typed in. */
    record Done(String title, Optional<Amount> change) {}

    /** At the stall the price is what is on the label: nothing is added to it that she did not type. */
    private static final String NO_TAX = "0";

    /** Said where a piece went with another sale. */
    static final String SOLD_ALREADY = "selling.stall.sold-already";

    private final SaleFilling filling;
    private final SaleBasket basket;
    private final SaleAnswers reader;
    private final SellingDocuments documents;
    private final StallGoods goods;
    private final MoneyChoices money;
    private final Refusal refusal;
    private final CurrentShop shop;
    private final Fmt fmt;

    StallDesk(
            SaleFilling filling,
            SaleBasket basket,
            SaleAnswers reader,
            SellingDocuments documents,
            StallGoods goods,
            MoneyChoices money,
            Refusal refusal,
            CurrentShop shop,
            Fmt fmt) {
        this.filling = filling;
        this.basket = basket;
        this.reader = reader;
        this.documents = documents;
        this.goods = goods;
        this.money = money;
        this.refusal = refusal;
        this.shop = shop;
        this.fmt = fmt;
    }

    /** An empty form: today, into the first cash box, by the channel whose money goes there. */
    StallForm blank(List<ChannelFacts> channels) {
        StallForm form = new StallForm();
        form.id = UUID.randomUUID().toString();
        form.date = shop.today().toString();
        form.place = money.cash().map(MoneyPlace::id).map(UUID::toString).orElse("");
        form.channel = channels.stream()
                .filter(channel -> form.place.equals(channel.moneyPlaceId().toString()))
                .map(channel -> channel.id().toString())
                .findFirst()
                .orElse("");
        return form;
    }

    void fill(StallForm form, Ware ware) {
        form.offer = ware.offer() == null ? "" : ware.offer().toString();
        form.codes = ware.code();
        Long price = ware.priceMinor();
        form.price = price == null ? "" : shop.currency().plain(Amount.of(price));
    }

    /** Stores the sale, or tells on the form why not. */
    Optional<Done> sell(StallForm form, UUID id, BindingResult errors) {
        SaleForm sale = sale(form);
        BindingResult own = new DirectFieldBindingResult(sale, "sale");
        Optional<SaleContent> content = reader.read(sale, own, id, null);
        own.getFieldErrors()
                .forEach(error -> errors.rejectValue(
                        field(error.getField()), String.valueOf(error.getCode()), error.getArguments(), null));
        Optional<Amount> change = content.flatMap(read -> change(form, read, errors));
        if (content.isEmpty() || errors.hasErrors()) {
            return Optional.empty();
        }
        Sale handedOver = new Sale(id, content.get());
        handedOver.posted(content.get().date());
        try {
            documents.record(handedOver);
        } catch (Refused refused) {
            tell(form, id, errors, refused);
            return Optional.empty();
        }
        return Optional.of(new Done(content.get().lines().get(0).title(), change));
    }

    private SaleForm sale(StallForm form) {
        SaleForm sale = filling.blank();
        String codes = String.join(" ", PieceFinder.codes(form.codes));
        Ids.read(form.offer).ifPresent(offer -> basket.addOffer(sale, offer));
        if (sale.lines.isEmpty() || !sale.lines.get(0).codes.equalsIgnoreCase(codes)) {
            sale.lines.clear();
            basket.addPiece(sale, codes);
        }
        if (!sale.lines.isEmpty()) {
            sale.lines.get(0).price = form.price;
        }
        sale.date = form.date.isBlank() ? shop.today().toString() : form.date;
        sale.channel = form.channel;
        sale.place = form.place;
        sale.tax = form.tax.isBlank() ? NO_TAX : form.tax;
        return sale;
    }

    private Optional<Amount> change(StallForm form, SaleContent sale, BindingResult errors) {
        Amount due = sale.sums().due();
        Optional<CashChange> cash = new Answers(errors, shop.currency())
                .optionalAmount("got", form.got)
                .map(got -> new CashChange(due, got));
        if (cash.filter(paid -> !paid.isEnough()).isPresent()) {
            errors.rejectValue("got", "selling.stall.too-little", new Object[] {fmt.money(due)}, null);
        }
        return cash.flatMap(CashChange::back);
    }

    /** A piece that went with another sale is named with that sale: one of the two is a mistake, and she knows which. */
    private void tell(StallForm form, UUID id, BindingResult errors, Refused refused) {
        Optional<SoldAlready> sold =
                refused.problems().stream().anyMatch(problem -> problem.reason() == Problem.Reason.PIECE_ALREADY_GONE)
                        ? goods.soldAlready(form.codes, id)
                        : Optional.empty();
        sold.ifPresentOrElse(
                other -> errors.reject(
                        SOLD_ALREADY,
                        new Object[] {other.code(), fmt.date(other.docDate()), fmt.money(other.priceMinor())},
                        null),
                () -> refusal.tell(errors, refused));
    }

    /** Where the short form shows what the long one would have shown in its first line. */
    private static String field(String field) {
        return switch (field) {
            case "date", "channel", "place", "tax" -> field;
            case "lines[0].codes", "addPiece" -> "codes";
            default -> "price";
        };
    }
}
