package patinary.selling;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import patinary.money.Amount;

/** How far the refunds of a sale can still go, thing by thing. */
@Component
class RefundLimits {

    private final SalePage sales;

    RefundLimits(SalePage sales) {
        this.sales = sales;
    }

    /** One for each part, in order. */
    List<RefundLimit> of(UUID saleId, SaleContent sale, List<SalePage.Part> parts) {
        return parts.stream().map(part -> of(saleId, sale, part)).toList();
    }

    private RefundLimit of(UUID saleId, SaleContent sale, SalePage.Part part) {
        UUID supply = part.supplyId();
        UUID thing = thing(part);
        SalePage.Before before = sales.before(saleId, thing == null ? new UUID(0, 0) : thing);
        return new RefundLimit(
                part.figures().price(),
                Amount.of(before.amountMinor()),
                supply == null ? null : sale.soldOf(supply),
                before.quantity());
    }

    /** The piece or the supply. */
    static @Nullable UUID thing(SalePage.Part part) {
        return part.pieceId() == null ? part.supplyId() : part.pieceId();
    }
}
