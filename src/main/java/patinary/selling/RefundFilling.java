package patinary.selling;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.supplies.Supply;

/** Fills the form of a refund. */
@Component
class RefundFilling {

    private final SalePage sales;
    private final RetailShelf shelf;
    private final SellingDays days;
    private final CurrentShop shop;

    RefundFilling(SalePage sales, RetailShelf shelf, SellingDays days, CurrentShop shop) {
        this.sales = sales;
        this.shelf = shelf;
        this.days = days;
        this.shop = shop;
    }

    /**
     * A form that gives nothing back yet; of a supply it names all that may still be sent back.
     *
     * @param still how far each part can still go, in order
     */
    RefundForm blank(SaleContent sale, List<SalePage.Part> parts, List<RefundLimit> still) {
        RefundForm form = new RefundForm();
        form.id = UUID.randomUUID().toString();
        form.date = days.today();
        form.place = String.valueOf(sale.feePlaceId());
        Map<UUID, Supply.Facts> supplies = shelf.all(parts.stream()
                .map(SalePage.Part::supplyId)
                .filter(Objects::nonNull)
                .toList());
        for (int i = 0; i < parts.size(); i++) {
            RefundForm.Line line = new RefundForm.Line();
            line.thing = String.valueOf(RefundLimits.thing(parts.get(i)));
            BigDecimal left = still.get(i).leftQuantity();
            if (left.signum() > 0) {
                line.quantity = Optional.ofNullable(supplies.get(parts.get(i).supplyId()))
                        .map(supply -> RetailShelf.written(supply, left))
                        .orElse("");
            }
            form.lines.add(line);
        }
        return form;
    }

    /** A form for an order that was cancelled before it was sent: nothing is sent, and all that was paid goes back. */
    RefundForm cancelled(UUID saleId, SaleContent sale, List<SalePage.Part> parts, List<RefundLimit> still) {
        RefundForm form = blank(sale, parts, still);
        SalePage.RefundRest before = sales.givenBack(saleId);
        for (int i = 0; i < parts.size(); i++) {
            RefundForm.Line line = form.lines.get(i);
            line.amount = typed(still.get(i).left());
            line.never = parts.get(i).supplyId() == null && !parts.get(i).undelivered();
            line.back = still.get(i).leftQuantity().signum() > 0 ? "SHELF" : "";
        }
        form.shipping = typed(sale.shipping().minus(Amount.of(before.shippingMinor())));
        form.tax = sale.taxPassed() ? "" : typed(sale.tax().minus(Amount.of(before.taxMinor())));
        form.place = String.valueOf(GivingBack.fresh(saleId, sale, List.of()).usualPlace());
        return form;
    }

    /**
     * A form for something that the buyer brings back to take something else: what it cost becomes credit, and it is in stock
     * again. Of several things she says which.
     */
    RefundForm exchanged(UUID saleId, SaleContent sale, List<SalePage.Part> parts, List<RefundLimit> still) {
        RefundForm form = blank(sale, parts, still);
        form.exchange = true;
        form.way = "STORE_CREDIT";
        if (parts.size() == 1) {
            RefundForm.Line line = form.lines.get(0);
            line.amount = typed(still.get(0).left());
            line.comesBack = parts.get(0).supplyId() == null;
            line.back = parts.get(0).supplyId() == null ? "" : "SHELF";
            form.tax = sale.taxPassed()
                    ? ""
                    : typed(sale.tax().minus(Amount.of(sales.givenBack(saleId).taxMinor())));
        }
        return form;
    }

    private String typed(Amount amount) {
        return amount.isPositive() ? shop.currency().plain(amount) : "";
    }
}
