package patinary.buying;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * What each line of a receipt truly cost: its net, its share of discounts, shipping, premium and fees, and of tax.
 *
 * <p>The landed costs and the till's rounding add up to the receipt's total, to the cent. Discounts before tax come
 * first, then shipping, premium and fees, then taxes on what is taxable, then discounts after tax. Each is worked out on
 * the lines it applies to and shared over them by largest remainder: by net, or by count where the base is zero. See
 * docs/handbook/receipts.md.
 */
public final class ReceiptSums {

    private final List<ReceiptLine> lines;
    private final List<ChargeLine> chargeLines;
    private final List<Amount> net;
    private final List<Amount> reduced;
    private final List<Amount> taxBase;
    private final List<Amount> landed;
    private final Map<Integer, Amount> charged = new TreeMap<>();
    private Amount rounding = Amount.ZERO;

    private ReceiptSums(List<ReceiptLine> lines, List<ChargeLine> chargeLines) {
        this.lines = lines;
        this.chargeLines = chargeLines;
        this.net = lines.stream().map(ReceiptLine::net).toList();
        this.reduced = new ArrayList<>(net);
        this.taxBase = new ArrayList<>(net);
        this.landed = new ArrayList<>(net);
    }

    public static ReceiptSums of(List<ReceiptLine> lines, List<ReceiptCharge> charges, List<ChargeLine> chargeLines) {
        ReceiptSums sums = new ReceiptSums(lines, chargeLines);
        sums.each(charges, c -> c.kind() == ChargeKind.DISCOUNT && !c.afterTax(), sums::discountBeforeTax);
        sums.each(charges, c -> isAddition(c.kind()), sums::addition);
        sums.each(charges, c -> c.kind() == ChargeKind.TAX, sums::tax);
        sums.each(charges, c -> c.kind() == ChargeKind.DISCOUNT && c.afterTax(), sums::discountAfterTax);
        sums.each(
                charges,
                c -> c.kind() == ChargeKind.ROUNDING,
                c -> sums.rounding = sums.rounding.plus(sums.note(c, c.of(Amount.ZERO))));
        return sums;
    }

    /** The net of each line, in order. */
    public List<Amount> net() {
        return net;
    }

    /** The landed cost of each line, in order. */
    public List<Amount> landed() {
        return Collections.unmodifiableList(landed);
    }

    /** What each charge came to, by its order on the receipt; discounts below zero. */
    public Map<Integer, Amount> charged() {
        return Collections.unmodifiableMap(charged);
    }

    public Amount rounding() {
        return rounding;
    }

    /** What the till should have asked for. */
    public Amount total() {
        return landed.stream().collect(Amount.sum()).plus(rounding);
    }

    private void discountBeforeTax(ReceiptCharge charge) {
        List<Integer> base = appliesTo(charge);
        Amount off = note(charge, charge.of(total(net, base)).negated());
        share(off, base, net, List.of(reduced, taxBase, landed));
    }

    private void addition(ReceiptCharge charge) {
        List<Integer> base = appliesTo(charge);
        Amount more = note(charge, charge.of(total(reduced, base)));
        share(more, base, reduced, charge.taxed() ? List.of(taxBase, landed) : List.of(landed));
    }

    private void tax(ReceiptCharge charge) {
        List<Integer> base = appliesTo(charge);
        share(note(charge, charge.of(total(taxBase, base))), base, taxBase, List.of(landed));
    }

    private void discountAfterTax(ReceiptCharge charge) {
        List<Integer> base = appliesTo(charge);
        Amount off = note(charge, charge.of(total(landed, base)).negated());
        share(off, base, reduced, List.of(landed));
    }

    private Amount note(ReceiptCharge charge, Amount amount) {
        charged.put(charge.line(), amount);
        return amount;
    }

    private void share(Amount amount, List<Integer> base, List<Amount> by, List<List<Amount>> onto) {
        if (base.isEmpty()) {
            return;
        }
        boolean nothing = base.stream().allMatch(i -> by.get(i).isZero());
        List<Amount> shares = nothing
                ? Shares.split(
                        amount, base.stream().map(i -> lines.get(i).quantity()).toList())
                : Shares.byAmount(amount, base.stream().map(by::get).toList());
        for (int i = 0; i < shares.size(); i++) {
            Amount part = shares.get(i);
            int line = base.get(i);
            onto.forEach(column -> column.set(line, column.get(line).plus(part)));
        }
    }

    /** Positions of the lines that a charge applies to; charity never takes a share. */
    private List<Integer> appliesTo(ReceiptCharge charge) {
        List<Integer> named = chargeLines.stream()
                .filter(c -> c.charge() == charge.line())
                .map(ChargeLine::line)
                .toList();
        return IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).kind() != LineKind.CHARITY)
                .filter(i -> named.isEmpty() || named.contains(lines.get(i).line()))
                .boxed()
                .toList();
    }

    private void each(List<ReceiptCharge> charges, Predicate<ReceiptCharge> which, Consumer<ReceiptCharge> action) {
        charges.stream().filter(which).forEach(action);
    }

    private static boolean isAddition(ChargeKind kind) {
        return kind == ChargeKind.SHIPPING || kind == ChargeKind.PREMIUM || kind == ChargeKind.FEE;
    }

    private static Amount total(List<Amount> column, List<Integer> positions) {
        return positions.stream().map(column::get).collect(Amount.sum());
    }
}
