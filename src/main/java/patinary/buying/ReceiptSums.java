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
 * the lines it applies to, as far as earlier ones have left them, and shared over them by largest remainder in proportion
 * to what it was worked out on, or by count where that is zero. See docs/handbook/receipts.md.
 */
public final class ReceiptSums {

    /**
     * The parts of one line's landed cost, which add up to it.
     *
     * @param net quantity times price, less the line's own discount
     * @param discounts its share of the receipt's discounts, zero or less
     * @param charges its share of shipping, premium and fees
     * @param tax its share of taxes
     */
    public record Parts(Amount net, Amount discounts, Amount charges, Amount tax) {

        public Amount landed() {
            return net.plus(discounts).plus(charges).plus(tax);
        }
    }

    private final List<ReceiptLine> lines;
    private final List<ChargeLine> chargeLines;
    private final List<Amount> net;
    private final List<Amount> reduced;
    private final List<Amount> taxBase;
    private final List<Amount> landed;
    private final List<Amount> discounts;
    private final List<Amount> additions;
    private final List<Amount> taxes;
    private final Map<Integer, Amount> charged = new TreeMap<>();
    private Amount rounding = Amount.ZERO;
    private boolean bearable = true;

    private ReceiptSums(List<ReceiptLine> lines, List<ChargeLine> chargeLines) {
        this.lines = lines;
        this.chargeLines = chargeLines;
        this.net = lines.stream().map(ReceiptLine::net).toList();
        this.reduced = new ArrayList<>(net);
        this.taxBase = new ArrayList<>(net);
        this.landed = new ArrayList<>(net);
        this.discounts = new ArrayList<>(Collections.nCopies(lines.size(), Amount.ZERO));
        this.additions = new ArrayList<>(discounts);
        this.taxes = new ArrayList<>(discounts);
    }

    public static ReceiptSums of(List<ReceiptLine> lines, List<ReceiptCharge> charges, List<ChargeLine> chargeLines) {
        ReceiptSums sums = new ReceiptSums(lines, chargeLines);
        sums.bearable = sums.net.stream().noneMatch(Amount::isNegative);
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

    /** What each line's landed cost is made of, in order. */
    public List<Parts> parts() {
        return IntStream.range(0, lines.size())
                .mapToObj(i -> new Parts(net.get(i), discounts.get(i), additions.get(i), taxes.get(i)))
                .toList();
    }

    /** What each charge came to, by its order on the receipt; discounts below zero. */
    public Map<Integer, Amount> charged() {
        return Collections.unmodifiableMap(charged);
    }

    public Amount rounding() {
        return rounding;
    }

    /**
     * Whether every charge found a line to go to, and no discount took off more than there was. Where it is false the sums
     * say what could be shared, and the receipt cannot be recorded.
     */
    public boolean isBearable() {
        return bearable;
    }

    /** What the till should have asked for. */
    public Amount total() {
        return landed.stream().collect(Amount.sum()).plus(rounding);
    }

    private void discountBeforeTax(ReceiptCharge charge) {
        share(charge, true, reduced, List.of(reduced, taxBase, landed, discounts));
    }

    private void addition(ReceiptCharge charge) {
        share(
                charge,
                false,
                reduced,
                charge.taxed() ? List.of(taxBase, landed, additions) : List.of(landed, additions));
    }

    private void tax(ReceiptCharge charge) {
        share(charge, false, taxBase, List.of(landed, taxes));
    }

    private void discountAfterTax(ReceiptCharge charge) {
        share(charge, true, landed, List.of(landed, discounts));
    }

    private Amount note(ReceiptCharge charge, Amount amount) {
        charged.put(charge.line(), amount);
        return amount;
    }

    /** Works a charge out on a column and adds each line's share to other columns. */
    private void share(ReceiptCharge charge, boolean off, List<Amount> base, List<List<Amount>> onto) {
        List<Integer> applies = appliesTo(charge);
        Amount whole = total(base, applies);
        Amount amount = charge.of(whole);
        if (applies.isEmpty() && !amount.isZero() || off && amount.compareTo(whole) > 0 || !isShareable(base)) {
            bearable = false;
            return;
        }
        if (applies.isEmpty()) {
            return;
        }
        List<Amount> shares = shares(note(charge, off ? amount.negated() : amount), applies, base);
        for (int i = 0; i < shares.size(); i++) {
            Amount part = shares.get(i);
            int line = applies.get(i);
            onto.forEach(column -> column.set(line, column.get(line).plus(part)));
        }
    }

    private List<Amount> shares(Amount amount, List<Integer> applies, List<Amount> by) {
        boolean nothing = applies.stream().allMatch(i -> by.get(i).isZero());
        return nothing
                ? Shares.split(
                        amount,
                        applies.stream().map(i -> lines.get(i).quantity()).toList())
                : Shares.byAmount(amount, applies.stream().map(by::get).toList());
    }

    private static boolean isShareable(List<Amount> base) {
        return base.stream().noneMatch(Amount::isNegative);
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
