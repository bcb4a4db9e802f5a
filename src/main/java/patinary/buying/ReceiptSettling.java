package patinary.buying;

import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;
import org.springframework.validation.DirectFieldBindingResult;
import org.springframework.validation.Errors;
import patinary.money.Amount;
import patinary.money.UnreadableAmount;
import patinary.shop.CurrentShop;

/** Reads a receipt's form after doing what she chose about a difference to the till's total. */
@Component
class ReceiptSettling {

    private final ReceiptReader reader;
    private final CurrentShop shop;

    ReceiptSettling(ReceiptReader reader, CurrentShop shop) {
        this.reader = reader;
        this.shop = shop;
    }

    ReceiptReader.Outcome read(ReceiptForm form, BindingResult errors, String action) {
        if (action.startsWith("settle-")) {
            Errors first = new DirectFieldBindingResult(form, errors.getObjectName());
            ReceiptReader.Difference difference = reader.read(form, first).difference();
            if (difference != null) {
                settle(form, difference, action);
            }
        }
        return reader.read(form, errors);
    }

    private void settle(ReceiptForm form, ReceiptReader.Difference difference, String action) {
        if (action.equals("settle-total")) {
            form.tillTotal = shop.currency().plain(difference.sum());
        } else if (action.equals("settle-rounding") && difference.mayBeRounding()) {
            form.rounding = shop.currency().plain(rounding(form).plus(difference.difference()));
        }
    }

    private Amount rounding(ReceiptForm form) {
        try {
            return form.rounding.isBlank() ? Amount.ZERO : shop.currency().parse(form.rounding);
        } catch (UnreadableAmount unreadable) {
            return Amount.ZERO;
        }
    }
}
