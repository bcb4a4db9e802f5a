package patinary.taxyear;

import patinary.money.Amount;
import patinary.taxbasis.Adjustment;
import patinary.taxbasis.Adjustments;
import patinary.taxbasis.Reason;

/**
 * Cost of goods from stock and purchases: what was there, plus what came, less what the owner took, less what is left
 * (IRS Publication 334, chapter on cost of goods sold). Everything at cost.
 *
 * @param opening stock at the beginning of the year
 * @param purchases goods bought for sale, net of what went back to sources
 * @param ownUse cost of what the owner withdrew
 * @param materials materials and supplies bought for the bench
 * @param packed of these, what sales were packed in: a cost of selling, deducted among the expenses and not here
 * @param closing stock at the end of the year
 */
public record CostOfGoods(
        Amount opening, Amount purchases, Amount ownUse, Amount materials, Amount packed, Amount closing) {

    /**
     * The same as the year is counted for tax. Stock at either end is without what was deducted before; the first is what the
     * year before ended with, however this year is counted, so that a change of the way of counting shows in the cost.
     */
    CostOfGoods adjusted(Adjustments adjustments) {
        return new CostOfGoods(
                opening.plus(adjustments.sum(row -> row.reason().isStock(), Adjustment::before)),
                purchases.minus(adjustments.sum(row -> row.reason() == Reason.OWNERS_SHARE, Adjustment::profit)),
                ownUse,
                materials.minus(adjustments.sum(row -> row.reason() == Reason.UNPAID_SUPPLIES, Adjustment::profit)),
                packed,
                closing.plus(adjustments.sum(row -> row.reason().isStock(), Adjustment::after)));
    }

    /** Purchases less own use, which a form asks for on one line. */
    public Amount purchasesLessOwnUse() {
        return purchases.minus(ownUse);
    }

    /** Materials less what sales were packed in, so that no box is deducted twice. */
    public Amount materialsLessPacked() {
        return materials.minus(packed);
    }

    /** Everything that could have been sold. */
    public Amount available() {
        return opening.plus(purchasesLessOwnUse()).plus(materialsLessPacked());
    }

    public Amount cost() {
        return available().minus(closing);
    }
}
