package patinary.buying;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.validation.DirectFieldBindingResult;
import org.springframework.validation.Errors;
import patinary.buying.ReceiptForm.ChargeForm;
import patinary.buying.ReceiptForm.LineForm;
import patinary.money.Amount;
import patinary.money.UnreadableAmount;
import patinary.shop.CurrentShop;

/** Reads a receipt's form after doing what she chose about a difference to the till's total. */
@Component
class ReceiptSettling {

    private final ReceiptReader reader;
    private final CurrentShop shop;
    private final OpenQuestion question;

    ReceiptSettling(ReceiptReader reader, CurrentShop shop, OpenQuestion question) {
        this.reader = reader;
        this.shop = shop;
        this.question = question;
    }

    ReceiptReader.Outcome read(ReceiptForm form, BindingResult errors, String action) {
        if (action.startsWith("settle-")) {
            ReceiptReader.Difference difference = difference(form);
            if (difference != null) {
                settle(form, difference, action);
            }
        }
        return reader.read(form, errors);
    }

    /** The difference as the form stands, or null where there is none or something cannot be read. */
    ReceiptReader.@Nullable Difference difference(ReceiptForm form) {
        Errors unheard = new DirectFieldBindingResult(form, "form");
        return reader.read(form, unheard).difference();
    }

    private void settle(ReceiptForm form, ReceiptReader.Difference difference, String action) {
        Amount more = difference.difference();
        switch (action) {
            case "settle-total" -> form.tillTotal = plain(difference.sum());
            case "settle-rounding" -> {
                if (difference.mayBeRounding()) {
                    form.rounding = plain(rounding(form).plus(more));
                }
            }
            case "settle-tax" -> tax(form);
            case "settle-discount" -> discount(form, more, "");
            case "settle-open" -> open(form, more);
            default -> {
                // Another word settles nothing: the difference is shown again.
            }
        }
    }

    /** What the till asked beyond the things was sales tax, whatever percentage was expected, on what was taxed before. */
    private void tax(ReceiptForm form) {
        List<ChargeForm> before = form.charges.stream()
                .filter(charge -> charge.kind.equals(ChargeKind.TAX.name()))
                .toList();
        form.charges.removeAll(before);
        ReceiptReader.Difference whole = difference(form);
        if (whole != null && whole.difference().isPositive()) {
            ChargeForm tax = charge(ChargeKind.TAX, "", whole.difference());
            if (before.stream().noneMatch(charge -> charge.lines.isEmpty())) {
                before.stream()
                        .flatMap(charge -> charge.lines.stream())
                        .distinct()
                        .forEach(tax.lines::add);
            }
            form.charges.add(tax);
        }
    }

    private void discount(ReceiptForm form, Amount more, String title) {
        if (more.isNegative()) {
            ChargeForm discount = charge(ChargeKind.DISCOUNT, title, more.absolute());
            discount.afterTax = true;
            form.charges.add(discount);
        }
    }

    /**
     * Nobody knows yet what it was. Money beyond the things leaves as hers, so that no cost and no tax figure rests on it;
     * money below them is a discount. Both carry a title that says so, until she finds out and changes the receipt.
     */
    private void open(ReceiptForm form, Amount more) {
        String title = question.title();
        if (more.isPositive()) {
            // What applied to every line so far does not apply to this one, which would change the total again.
            form.charges.stream()
                    .filter(charge -> charge.lines.isEmpty())
                    .forEach(charge ->
                            IntStream.rangeClosed(1, form.lines.size()).forEach(charge.lines::add));
            LineForm line = new LineForm();
            line.kind = LineKind.HOME.name();
            line.title = title;
            line.price = plain(more);
            form.lines.add(line);
        } else {
            discount(form, more, title);
        }
    }

    private ChargeForm charge(ChargeKind kind, String title, Amount amount) {
        ChargeForm charge = new ChargeForm();
        charge.kind = kind.name();
        charge.title = title;
        charge.value = plain(amount);
        return charge;
    }

    private String plain(Amount amount) {
        return shop.currency().plain(amount);
    }

    private Amount rounding(ReceiptForm form) {
        try {
            return form.rounding.isBlank() ? Amount.ZERO : shop.currency().parse(form.rounding);
        } catch (UnreadableAmount unreadable) {
            return Amount.ZERO;
        }
    }
}
