package patinary.selling;

import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        Map<UUID, SalePage.Before> before = sales.before(saleId);
        return parts.stream().map(part -> of(sale, part, before)).toList();
    }

    private static RefundLimit of(SaleContent sale, SalePage.Part part, Map<UUID, SalePage.Before> earlier) {
        UUID supply = part.supplyId();
        UUID thing = Optional.ofNullable(thing(part)).orElse(new UUID(0, 0));
        SalePage.Before before = earlier.getOrDefault(thing, SalePage.Before.nothing(thing));
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
