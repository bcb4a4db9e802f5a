package patinary.buying;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import patinary.buying.ReceiptForm.ChargeForm;
import patinary.buying.ReceiptForm.LineForm;
import patinary.buying.ReceiptForm.PaymentForm;
import patinary.buying.ReceiptForm.PieceForm;
import patinary.ledger.Tender;
import patinary.money.Amount;
import patinary.money.Percent;
import patinary.pieces.Piece;
import patinary.pieces.Pieces;
import patinary.shop.CurrentShop;
import patinary.supplies.Supply;
import patinary.web.Ids;

/** Fills a receipt's form: an empty one, or one that reads back to what is stored. */
@Component
@Transactional(readOnly = true)
class ReceiptFill {

    private final CurrentShop shop;
    private final SupplyReader supplies;
    private final Pieces pieces;

    ReceiptFill(CurrentShop shop, SupplyReader supplies, Pieces pieces) {
        this.shop = shop;
        this.supplies = supplies;
        this.pieces = pieces;
    }

    ReceiptForm empty() {
        ReceiptForm form = new ReceiptForm();
        form.id = UUID.randomUUID().toString();
        form.lines.add(new LineForm());
        form.charges.add(new ChargeForm());
        return form;
    }

    /**
     * A form with a line for each supply of a buying list, prices left to type. What cannot be read is left out.
     *
     * @param wanted such as {@code 2*id/jar}: how many, the supply's id and the name of the pack
     */
    ReceiptForm wished(String source, List<String> wanted) {
        ReceiptForm form = empty();
        form.source = Ids.read(source).map(UUID::toString).orElse("");
        List<LineForm> lines = wanted.stream()
                .limit(FormEdits.MOST_LINES)
                .flatMap(wish -> supplies.wished(wish).stream())
                .toList();
        if (!lines.isEmpty()) {
            form.lines.clear();
            form.lines.addAll(lines);
        }
        return form;
    }

    ReceiptForm of(ReceiptDesk.Stored stored) {
        ReceiptContent content = stored.content();
        ReceiptForm form = new ReceiptForm();
        form.id = stored.id().toString();
        form.version = stored.version();
        form.day = ReceiptForm.OTHER;
        form.date = content.date().toString();
        form.source = text(content.sourceId());
        form.trip = text(content.tripId());
        form.note = content.note();
        form.tillTotal = plain(content.tillTotal());
        // Those of all lines at once; each line then finds its own among them.
        Map<UUID, Supply> bought = supplies.of(content.lines());
        Map<UUID, Piece> brought =
                pieces
                        .findAllByIdIn(content.pieces().stream()
                                .map(ReceiptPiece::pieceId)
                                .toList())
                        .stream()
                        .collect(Collectors.toMap(Piece::id, Function.identity()));
        content.lines().forEach(line -> form.lines.add(line(content, line, bought, brought)));
        content.charges().forEach(charge -> charge(form, content, charge));
        payments(form, content.payments());
        return form;
    }

    private LineForm line(
            ReceiptContent content, ReceiptLine line, Map<UUID, Supply> bought, Map<UUID, Piece> brought) {
        LineForm form = new LineForm();
        form.kind = line.kind().name();
        form.title = line.title();
        form.price = plain(line.price());
        form.quantity = line.quantity().stripTrailingZeros().toPlainString();
        form.discount = either(line.discount(), line.discountPercent());
        form.about = line.about();
        form.category = line.category() == null ? "" : line.category();
        SupplyReader.fill(form, line, bought);
        List<ReceiptPiece> own = content.pieces().stream()
                .filter(piece -> piece.line() == line.line())
                .toList();
        boolean equal = own.stream()
                        .map(p -> p.weight().stripTrailingZeros())
                        .distinct()
                        .count()
                < 2;
        own.forEach(piece -> form.pieces.add(piece(piece, equal, brought.get(piece.pieceId()))));
        return form;
    }

    private PieceForm piece(ReceiptPiece stored, boolean equal, @Nullable Piece piece) {
        PieceForm form = new PieceForm();
        form.id = stored.pieceId().toString();
        form.value = equal ? "" : plain(Amount.of(stored.weight().longValue()));
        if (piece != null) {
            form.title = piece.facts().title();
            form.kind = text(piece.facts().kindId());
            form.style = text(piece.facts().styleId());
        }
        return form;
    }

    private void charge(ReceiptForm form, ReceiptContent content, ReceiptCharge charge) {
        if (charge.kind() == ChargeKind.ROUNDING) {
            form.rounding = either(charge.amount(), charge.percent());
            return;
        }
        ChargeForm row = new ChargeForm();
        row.kind = charge.kind().name();
        row.title = charge.title();
        row.value = either(charge.amount(), charge.percent());
        row.taxed = charge.taxed();
        row.afterTax = charge.afterTax();
        row.lines = content.chargeLines().stream()
                .filter(line -> line.charge() == charge.line())
                .map(ChargeLine::line)
                .collect(Collectors.toCollection(ArrayList::new));
        form.charges.add(row);
    }

    /** The last payment is shown as the one that takes the rest. */
    private void payments(ReceiptForm form, List<Tender> payments) {
        for (Tender payment : payments) {
            PaymentForm row = new PaymentForm();
            row.with = PaidWith.answer(payment.way(), payment.placeId());
            row.amount = plain(payment.amount());
            form.payments.add(row);
        }
        if (!form.payments.isEmpty()) {
            form.paidWith = form.payments.remove(form.payments.size() - 1).with;
        }
    }

    private String either(@Nullable Amount amount, @Nullable Percent percent) {
        if (percent != null) {
            return percent.value().stripTrailingZeros().toPlainString() + "%";
        }
        return amount == null ? "" : plain(amount);
    }

    private String plain(Amount amount) {
        return shop.currency().plain(amount);
    }

    private static String text(@Nullable UUID id) {
        return id == null ? "" : id.toString();
    }
}
