package patinary.taxyear;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/** The postings of a year, added up by account, category and the part they play in it: all that its page is reckoned from. */
record YearParts(List<Part> parts) {

    private static final Set<String> PROFIT_AND_LOSS = Set.of("INCOME", "EXPENSE", "COST");

    /**
     * What postings that play the same part come to.
     *
     * @param category empty where the account has none
     * @param part whether it is income, expense, cost, own use, stock or money
     * @param purchase what of it counts as bought: goods, materials or the opening stock; null where nothing does
     * @param packed whether it is what sales were packed in
     * @param amountMinor debit positive, credit negative
     */
    record Part(
            String account,
            String category,
            String part,
            @Nullable String purchase,
            boolean packed,
            long amountMinor) {}

    /** Every account of profit and loss by category, in their order. */
    List<AccountSum> sums() {
        Map<String, AccountSum> sums = new TreeMap<>();
        for (Part part : parts) {
            if (PROFIT_AND_LOSS.contains(part.part())) {
                AccountSum sum = new AccountSum(part.account(), part.category(), part.amountMinor());
                sums.merge(sum.key(), sum, AccountSum::plus);
            }
        }
        return List.copyOf(sums.values());
    }

    /**
     * The cost of goods from stock and purchases. What the opening document brought counts as opening stock of its year.
     *
     * @param before stock at the end of the year before
     */
    CostOfGoods goods(Amount before) {
        return new CostOfGoods(
                before.plus(sum(part -> "OPENING".equals(part.purchase()))),
                sum(part -> "GOODS".equals(part.purchase())),
                sum(part -> part.part().equals("OWN_USE")),
                sum(part -> "MATERIALS".equals(part.purchase())),
                sum(Part::packed),
                before.plus(sum(part -> part.part().equals("STOCK"))));
    }

    private Amount sum(Predicate<Part> which) {
        return parts.stream()
                .filter(which)
                .map(part -> Amount.of(part.amountMinor()))
                .collect(Amount.sum());
    }
}
