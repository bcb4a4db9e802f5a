package patinary.selling;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.util.MultiValueMap;
import patinary.ledger.Tender;
import patinary.ledger.Way;
import patinary.money.Amount;
import patinary.shop.CurrentShop;
import patinary.supplies.Supply;

/** Fills the form of a sale with what is recorded. */
@Component
class SaleFilling {

    private final SaleBasket basket;
    private final RetailShelf shelf;
    private final BundleLines bundles;
    private final SellingDays days;
    private final CurrentShop shop;

    SaleFilling(SaleBasket basket, RetailShelf shelf, BundleLines bundles, SellingDays days, CurrentShop shop) {
        this.basket = basket;
        this.shelf = shelf;
        this.bundles = bundles;
        this.days = days;
        this.shop = shop;
    }

    SaleForm blank() {
        SaleForm form = new SaleForm();
        form.id = UUID.randomUUID().toString();
        form.date = days.today();
        return form;
    }

    /** Takes over what another page knows of the sale already, such as the stall or a file; prices are those of the lines, in order. */
    void prefill(SaleForm form, MultiValueMap<String, String> known) {
        form.date = known(known, "date", form.date);
        form.channel = known(known, "channel", form.channel);
        form.buyer = known(known, "buyer", "");
        form.order = known(known, "order", "");
        form.discount = known(known, "discount", "");
        form.shipping = known(known, "shipping", "");
        form.tax = known(known, "tax", "");
        form.fee = known(known, "fee", "");
        form.place = known(known, "place", "");
        form.credit = known(known, "credit", "");
        List<String> prices = known.getOrDefault("price", List.of());
        for (int i = 0; i < Math.min(prices.size(), form.lines.size()); i++) {
            form.lines.get(i).price = prices.get(i);
        }
    }

    private static String known(MultiValueMap<String, String> known, String name, String usual) {
        String value = known.getFirst(name);
        return value == null ? usual : value;
    }

    SaleForm form(Sale sale) {
        SaleContent content = sale.content();
        SaleForm form = blank();
        form.id = sale.id().toString();
        form.version = sale.version();
        form.date = content.date().toString();
        form.channel = content.channelId().toString();
        form.buyer = content.buyer();
        form.order = content.orderReference();
        form.note = content.note();
        form.discount = typed(content.discount());
        form.discountCode = content.extras().discountCode();
        form.tip = typed(content.extras().tipOrNone());
        form.shipping = typed(content.shipping());
        UUID place = content.taxPlaceId();
        form.taxPlace = place == null ? SaleTax.NONE : place.toString();
        form.tax = place == null ? typed(content.tax()) : shop.currency().plain(content.tax());
        form.taxBy = content.taxPassed() ? "CHANNEL" : "SHOP";
        form.fee = shop.currency().plain(content.fee());
        form.deposit = typed(paid(content, Way.DEPOSIT));
        form.credit = typed(paid(content, Way.STORE_CREDIT));
        form.owed = typed(paid(content, Way.OWED));
        content.payments().stream()
                .filter(tender -> tender.way() == Way.PLACE)
                .findFirst()
                .ifPresent(tender -> form.place = String.valueOf(tender.placeId()));
        // Those of all lines at once; each line then finds its own among them.
        Map<UUID, PieceRef> pieces =
                basket.pieces(content.ordered().stream().map(SalePiece::pieceId).toList());
        Map<UUID, Supply.Facts> supplies = shelf.all(content.lines().stream()
                .filter(line -> line.bundle() == null)
                .map(SaleLine::supplyId)
                .filter(Objects::nonNull)
                .toList());
        content.lines().stream()
                .filter(line -> line.bundle() == null)
                .forEach(line -> form.lines.add(line(content, line, pieces, supplies)));
        content.bundles().forEach(bundle -> form.lines.add(bundles.line(bundle)));
        content.wraps().forEach(wrap -> form.wraps.add(line(wrap)));
        return form;
    }

    static WrapLine line(Wrap wrap) {
        return new WrapLine(wrap.supplyId().toString(), wrap.typed(), wrap.estimated());
    }

    private SaleForm.Line line(
            SaleContent content, SaleLine line, Map<UUID, PieceRef> pieces, Map<UUID, Supply.Facts> supplies) {
        SaleForm.Line row = new SaleForm.Line();
        row.title = line.title();
        row.price = shop.currency().plain(line.price());
        row.discount = typed(line.discount());
        if (line.supplyId() != null && line.content() != null) {
            row.supply = line.supplyId().toString();
            row.quantity = line.quantity().stripTrailingZeros().toPlainString();
            BigDecimal one = line.content();
            row.content = Optional.ofNullable(supplies.get(line.supplyId()))
                    .map(supply -> RetailShelf.written(supply, one))
                    .orElse("");
            return row;
        }
        Map<UUID, BigDecimal> weights = content.ordered().stream()
                .filter(piece -> piece.line() == line.line())
                .collect(Collectors.toMap(SalePiece::pieceId, SalePiece::weight));
        SaleBasket.fillPieces(row, weights, pieces);
        return row;
    }

    private static Amount paid(SaleContent content, Way way) {
        return content.payments().stream()
                .filter(tender -> tender.way() == way)
                .map(Tender::amount)
                .collect(Amount.sum());
    }

    private String typed(Amount amount) {
        return amount.isZero() ? "" : shop.currency().plain(amount);
    }
}
