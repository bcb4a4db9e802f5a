package patinary.taxbasis;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import patinary.money.Amount;
import patinary.money.Shares;

/**
 * What is still owed on a receipt, shared over what it brought by landed cost: a part payment pays every line alike. Common
 * practice, no source.
 *
 * @param owed what is not paid
 * @param total what the receipt came to
 * @param expenses its expense lines at landed cost, by category
 * @param supplies its lines of supplies for the bench at landed cost
 */
record OpenBill(Amount owed, Amount total, Map<String, Amount> expenses, Amount supplies) {

    /** The unpaid part of each category of expense, and of supplies. */
    record Parts(Map<String, Amount> expenses, Amount supplies) {}

    /** Shared by largest remainder, so that the parts and what is left to goods, home and charity add up to what is owed. */
    Parts parts() {
        Map<String, Amount> byCategory = new TreeMap<>(expenses);
        List<Amount> weights = new ArrayList<>(byCategory.values());
        weights.add(supplies);
        Amount named = weights.stream().collect(Amount.sum());
        weights.add(total.minus(named).max(Amount.ZERO));
        if (weights.stream().anyMatch(Amount::isNegative) || weights.stream().allMatch(Amount::isZero)) {
            return new Parts(Map.of(), Amount.ZERO);
        }
        List<Amount> shares = Shares.byAmount(owed, weights);
        Map<String, Amount> unpaid = new TreeMap<>();
        int at = 0;
        for (String category : byCategory.keySet()) {
            unpaid.put(category, shares.get(at++));
        }
        return new Parts(unpaid, shares.get(at));
    }

    /**
     * What an unpaid amount is without the sales tax in it, which is collected for the state and no income: in proportion,
     * rounded half up.
     *
     * @param owed of a sale
     * @param income of the sale, without tax
     * @param tax owed by the shop on the sale
     */
    static Amount withoutTax(Amount owed, Amount income, Amount tax) {
        return tax.isZero()
                ? owed
                : owed.part(
                        BigDecimal.valueOf(income.minor()),
                        BigDecimal.valueOf(income.plus(tax).minor()),
                        RoundingMode.HALF_UP);
    }
}
