package patinary.salestax;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import patinary.money.Amount;

/**
 * A place in a period. Sales are passed + untaxed + taxed; all without tax, with shipping.
 *
 * @param place the place, or {@link TaxRow#NO_PLACE}
 * @param passed sold where the channel pays the tax over
 * @param untaxed sold without tax
 * @param taxed sold with tax that the shop owes
 * @param taxedBack given back of what was taxed
 * @param otherBack given back of the rest
 * @param charged tax charged to buyers
 * @param givenBack tax given back to buyers
 * @param passedTax tax that channels pay over; for information
 * @param before owed when the period began, or brought in with the books
 * @param paidOver paid over, and kept as allowance, within the period
 * @param settled paid over, and kept, for this period, whenever it was
 */
record TaxLine(
        UUID place,
        Amount passed,
        Amount untaxed,
        Amount taxed,
        Amount taxedBack,
        Amount otherBack,
        Amount charged,
        Amount givenBack,
        Amount passedTax,
        Amount before,
        Amount paidOver,
        Amount settled) {

    static TaxLine of(UUID place, List<TaxRow> rows, Amount before, Amount settled) {
        List<TaxRow> sales = rows.stream().filter(TaxRow::isSale).toList();
        List<TaxRow> refunds = rows.stream().filter(TaxRow::isRefund).toList();
        List<TaxRow> opening =
                rows.stream().filter(row -> row.kind().equals("OPENING")).toList();
        List<TaxRow> paid = rows.stream()
                .filter(row -> !row.isSale() && !row.isRefund() && !opening.contains(row))
                .toList();
        return new TaxLine(
                place,
                sum(sales, TaxRow::passedPart),
                sum(sales, TaxRow::untaxedPart),
                sum(sales, TaxRow::taxedPart),
                sum(refunds, TaxRow::taxedPart).negated(),
                sum(refunds, row -> row.net().minus(row.taxedPart())).negated(),
                sum(sales, TaxRow::due),
                sum(refunds, TaxRow::due).negated(),
                sum(sales, row -> Amount.of(row.passedMinor())),
                before.plus(sum(opening, TaxRow::due)),
                sum(paid, TaxRow::due).negated(),
                settled);
    }

    /** All of them together. */
    static TaxLine total(Collection<TaxLine> lines) {
        return new TaxLine(
                TaxRow.NO_PLACE,
                sum(lines, TaxLine::passed),
                sum(lines, TaxLine::untaxed),
                sum(lines, TaxLine::taxed),
                sum(lines, TaxLine::taxedBack),
                sum(lines, TaxLine::otherBack),
                sum(lines, TaxLine::charged),
                sum(lines, TaxLine::givenBack),
                sum(lines, TaxLine::passedTax),
                sum(lines, TaxLine::before),
                sum(lines, TaxLine::paidOver),
                sum(lines, TaxLine::settled));
    }

    public boolean hasPlace() {
        return !place.equals(TaxRow.NO_PLACE);
    }

    public Amount sales() {
        return passed.plus(untaxed).plus(taxed);
    }

    /** What tax is owed on, after what was given back. */
    public Amount taxable() {
        return taxed.minus(taxedBack);
    }

    /** Tax of the period itself. */
    public Amount owed() {
        return charged.minus(givenBack);
    }

    /** Owed when the period ends: what the account says then. */
    public Amount after() {
        return before.plus(owed()).minus(paidOver);
    }

    /** Still to be paid for the period; below zero where too much was. */
    public Amount open() {
        return owed().minus(settled);
    }

    public boolean isEmpty() {
        return List.of(sales(), taxedBack, otherBack, charged, givenBack, before, paidOver, settled).stream()
                .allMatch(Amount::isZero);
    }

    private static <T> Amount sum(Collection<T> of, Function<T, Amount> what) {
        return of.stream().map(what).collect(Amount.sum());
    }
}
