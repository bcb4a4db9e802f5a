package patinary.buying;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.validation.DirectFieldBindingResult;
import patinary.buying.BuyForm.Thing;
import patinary.buying.ReceiptForm.ChargeForm;
import patinary.buying.ReceiptForm.LineForm;
import patinary.buying.ReceiptForm.PieceForm;
import patinary.money.Percent;
import patinary.pieces.Styles;
import patinary.shop.CurrentShop;
import patinary.web.Ids;

/** Reads what was bought in the aisle as the receipt it is: the same rules, the same reasons, beside its own fields. */
@Component
class BuyReader {

    private final ReceiptSettling settling;
    private final Sources sources;
    private final patinary.pieces.ObjectKinds kinds;
    private final Styles styles;
    private final CurrentShop shop;
    private final MessageSource messages;

    BuyReader(
            ReceiptSettling settling,
            Sources sources,
            patinary.pieces.ObjectKinds kinds,
            Styles styles,
            CurrentShop shop,
            MessageSource messages) {
        this.settling = settling;
        this.sources = sources;
        this.kinds = kinds;
        this.styles = styles;
        this.shop = shop;
        this.messages = messages;
    }

    /** The draft of the receipt, to be used only where no error was noted; the difference where there is one. */
    ReceiptReader.Outcome read(BuyForm form, BindingResult errors) {
        ReceiptForm receipt = receipt(form);
        BindingResult own = new DirectFieldBindingResult(receipt, "receipt");
        ReceiptReader.Outcome outcome = settling.read(receipt, own, settlement(form, receipt));
        BuyErrors.copy(own, form, errors);
        checkCounts(form, errors);
        checkChoices(form, errors);
        return outcome;
    }

    /** An answer that was given for another difference settles nothing: it is asked again. */
    private String settlement(BuyForm form, ReceiptForm receipt) {
        if (form.settle.isBlank()) {
            return "save";
        }
        ReceiptReader.Difference now = settling.difference(receipt);
        boolean same = form.settled.isBlank()
                || now != null && shop.currency().plain(now.difference()).equals(form.settled);
        return same ? "settle-" + form.settle.toLowerCase(java.util.Locale.ROOT) : "save";
    }

    private ReceiptForm receipt(BuyForm form) {
        ReceiptForm receipt = new ReceiptForm();
        receipt.id = form.id;
        receipt.day = form.day;
        receipt.date = BuyingDates.onTheClockOf(form.day, form.date, shop.today());
        receipt.source = form.newSource.isBlank() ? form.source : "";
        receipt.newSource = form.newSource;
        receipt.tillTotal = form.tillTotal;
        receipt.paidWith = form.paidWith;
        form.things.forEach(thing -> receipt.lines.add(line(thing)));
        if (form.tax.isBlank()) {
            Ids.read(receipt.source).flatMap(sources::findById).ifPresent(source -> usualTax(receipt, source));
        } else {
            receipt.charges.add(tax(form.tax.contains("%") ? form.tax : form.tax + "%"));
        }
        return receipt;
    }

    /** Goods for sale bought with a resale certificate are not taxed; what goes home is. */
    private static void usualTax(ReceiptForm receipt, Source source) {
        Percent percent = source.taxPercent();
        if (percent == null) {
            return;
        }
        ChargeForm tax = tax(percent.value().stripTrailingZeros().toPlainString() + "%");
        if (!source.resaleCertificate().isBlank()) {
            IntStream.rangeClosed(1, receipt.lines.size())
                    .filter(at -> receipt.lines.get(at - 1).kind.equals(LineKind.HOME.name()))
                    .forEach(tax.lines::add);
            if (tax.lines.isEmpty()) {
                return;
            }
        }
        receipt.charges.add(tax);
    }

    private static ChargeForm tax(String value) {
        ChargeForm tax = new ChargeForm();
        tax.value = value;
        return tax;
    }

    private LineForm line(Thing thing) {
        LineForm line = new LineForm();
        line.kind = thing.use;
        line.title = title(thing);
        line.price = thing.price;
        line.quantity = thing.together ? "1" : thing.count;
        line.discount = percent(thing);
        if (line.kind.equals(LineKind.PIECES.name())) {
            int pieces = count(thing) < 1 ? 1 : count(thing);
            IntStream.range(0, pieces).forEach(i -> line.pieces.add(piece(thing, i == 0 ? thing.piece : "")));
        }
        return line;
    }

    private static PieceForm piece(Thing thing, String id) {
        PieceForm piece = new PieceForm();
        piece.id = id;
        piece.kind = thing.kind;
        piece.style = thing.style;
        return piece;
    }

    private static String percent(Thing thing) {
        String percent = thing.otherPercent.isBlank() ? thing.percent : thing.otherPercent;
        return percent.isBlank() || percent.contains("%") ? percent : percent + "%";
    }

    /** What it is in her words, or the name of its kind, or what it was bought for. */
    private String title(Thing thing) {
        return Stream.of(thing.what, kind(thing))
                .filter(text -> text != null && !text.isBlank())
                .findFirst()
                .orElseGet(() -> messages.getMessage(
                        "buying.buy.untitled." + use(thing), null, LocaleContextHolder.getLocale()));
    }

    private static String use(Thing thing) {
        return List.of("HOME", "CHARITY").contains(thing.use) ? thing.use : "PIECES";
    }

    private @Nullable String kind(Thing thing) {
        return Ids.read(thing.kind)
                .flatMap(kinds::findById)
                .map(patinary.pieces.ObjectKind::name)
                .orElse(null);
    }

    /** How many, or 0 where that cannot be read. */
    private static int count(Thing thing) {
        String typed = thing.count.isBlank() ? "1" : thing.count.strip();
        int count = typed.matches("[0-9]{1,4}") ? Integer.parseInt(typed) : 0;
        return count > PieceRows.MOST ? 0 : count;
    }

    /** What was chosen from a phone's lists may be gone from the shop's by the time the entry comes. */
    private void checkChoices(BuyForm form, BindingResult errors) {
        for (int i = 0; i < form.things.size(); i++) {
            Thing thing = form.things.get(i);
            if (Ids.read(thing.kind).flatMap(kinds::findById).isEmpty()) {
                gone(i, "kind", thing.kind, thing, errors);
            }
            if (Ids.read(thing.style).flatMap(styles::findById).isEmpty()) {
                gone(i, "style", thing.style, thing, errors);
            }
        }
    }

    private static void gone(int at, String name, String chosen, Thing thing, BindingResult errors) {
        String field = "things[" + at + "]." + name;
        if (!chosen.isBlank() && !errors.hasFieldErrors(field)) {
            Object[] which = {at + 1, thing.price.isBlank() ? thing.what : thing.price};
            errors.rejectValue(field, "buying.error.gone." + name, which, null);
        }
    }

    private static void checkCounts(BuyForm form, BindingResult errors) {
        for (int i = 0; i < form.things.size(); i++) {
            String field = "things[" + i + "].count";
            if (count(form.things.get(i)) < 1 && !errors.hasFieldErrors(field)) {
                errors.rejectValue(field, "buying.error.piece-count", new Object[] {PieceRows.MOST}, null);
            }
        }
    }
}
