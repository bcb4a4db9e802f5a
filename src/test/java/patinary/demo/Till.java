package patinary.demo;

import static patinary.demo.Draws.usd;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import patinary.buying.ChargeKind;
import patinary.buying.ChargeLine;
import patinary.buying.LineKind;
import patinary.buying.ReceiptCharge;
import patinary.buying.ReceiptLine;
import patinary.buying.ReceiptSums;
import patinary.money.Amount;
import patinary.money.Percent;

/** Fills one receipt. What the till asks for is worked out by the product's own sums, which have tests of their own. */
final class Till {

    private final State shop;
    private final UUID id;
    private final List<ReceiptLine> lines = new ArrayList<>();
    private final List<ReceiptCharge> charges = new ArrayList<>();
    private final List<ChargeLine> chargeLines = new ArrayList<>();
    private final List<Runnable> after = new ArrayList<>();

    Till(State shop) {
        this.shop = shop;
        id = shop.draws.id();
    }

    UUID id() {
        return id;
    }

    /** A line that brings pieces: several are a lump sum shared by what each will be worth. */
    void pieces(String title, int count, long price, boolean about, List<State.Piece> brought, int off) {
        add(LineKind.PIECES, title, count, price, about, null, 0, null, off, 0);
        int line = lines.size();
        for (State.Piece piece : brought) {
            int weight = count == brought.size() ? 1 : piece.value / 100;
            after.add(() -> shop.rows.add("receipt_piece", id, line, piece.id, weight));
        }
    }

    void supply(State.Supply supply, int containers, boolean shelf, int off) {
        add(
                shelf ? LineKind.SHELF : LineKind.SUPPLY,
                supply.name,
                containers,
                supply.price,
                false,
                supply,
                supply.content,
                null,
                0,
                off);
        if (shelf) {
            supply.shelf += (long) containers * supply.content;
        } else {
            supply.bench += (long) containers * supply.content;
        }
    }

    void other(LineKind kind, String title, long price, String category) {
        add(kind, title, 1, price, false, null, 0, category, 0, 0);
    }

    void charge(ChargeKind kind, String title, String percent, long amount, boolean taxed, boolean afterTax) {
        charges.add(new ReceiptCharge(
                charges.size() + 1,
                kind,
                title,
                percent.isEmpty() ? null : Percent.of(percent),
                percent.isEmpty() ? Amount.of(amount) : null,
                taxed,
                afterTax));
    }

    /** The charge added last applies to this line only. */
    void onlyOn(int line) {
        chargeLines.add(new ChargeLine(charges.size(), line));
    }

    long total() {
        return ReceiptSums.of(lines, charges, chargeLines).total().minor();
    }

    void write(String source, Object trip, String note, List<Object[]> payments) {
        shop.rows.add("receipt", shop.document(id, note, shop.id(source), trip, usd(total())));
        lines.forEach(this::write);
        after.forEach(Runnable::run);
        for (ReceiptCharge charge : charges) {
            shop.rows.add(
                    "receipt_charge",
                    id,
                    charge.line(),
                    charge.kind(),
                    charge.title(),
                    charge.percent() == null ? "" : charge.percent().value().toPlainString(),
                    charge.amount() == null ? "" : usd(charge.amount().minor()),
                    charge.taxed(),
                    charge.afterTax());
        }
        chargeLines.forEach(line -> shop.rows.add("receipt_charge_line", id, line.charge(), line.line()));
        int number = 0;
        for (Object[] payment : payments) {
            shop.rows.add("receipt_payment", id, ++number, payment[0], payment[1], usd((long) payment[2]));
        }
    }

    private void write(ReceiptLine line) {
        shop.rows.add(
                "receipt_line",
                id,
                line.line(),
                line.kind(),
                line.title(),
                line.quantity().toPlainString(),
                usd(line.price().minor()),
                line.discountPercent() == null
                        ? ""
                        : line.discountPercent().value().toPlainString(),
                line.discount() == null ? "" : usd(line.discount().minor()),
                line.about(),
                line.supplyId() == null ? "" : line.supplyId(),
                line.content() == null ? "" : line.content().toPlainString(),
                line.category() == null ? "" : line.category());
    }

    private void add(
            LineKind kind,
            String title,
            int count,
            long price,
            boolean about,
            State.@org.jspecify.annotations.Nullable Supply supply,
            int content,
            @org.jspecify.annotations.Nullable String category,
            int off,
            int percent) {
        lines.add(new ReceiptLine(
                lines.size() + 1,
                kind,
                title,
                BigDecimal.valueOf(count),
                Amount.of(price),
                percent > 0 ? Percent.of(String.valueOf(percent)) : null,
                off > 0 ? Amount.of(off) : null,
                about,
                supply == null ? null : supply.id,
                supply == null ? null : BigDecimal.valueOf(content),
                category));
    }
}
