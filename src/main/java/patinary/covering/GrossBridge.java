package patinary.covering;

import java.util.ArrayList;
import java.util.List;
import patinary.money.Amount;

/**
 * The way from what the sales of a time brought by the books to the gross that was reported for it: one step for each
 * reason, and what no reason explains. The steps are sums of postings; the handbook's page of payouts says where the
 * reasons come from.
 *
 * @param start sales less fees and refunds, without shipping and tax
 * @param steps the reasons, in order; those of nothing are left out
 * @param explained the start and all steps
 * @param reported as typed
 */
record GrossBridge(Amount start, List<Step> steps, Amount explained, Amount reported) {

    /**
     * One reason.
     *
     * @param reason the end of its message key
     */
    record Step(String reason, Amount amount) {}

    static GrossBridge of(GrossReported reported, GrossFacts facts) {
        List<Step> steps = new ArrayList<>();
        add(steps, "fees", facts.feeMinor());
        add(steps, "refunds", facts.refundMinor());
        add(steps, "shipping", facts.shippingMinor());
        add(steps, "tax", facts.taxMinor());
        add(steps, "elsewhere", facts.paidHereMinor() - facts.due().minor());
        add(steps, "others", facts.othersMinor());
        add(steps, "later", facts.laterMinor());
        add(steps, "income", facts.incomeMinor());
        if (reported.withPassedTax()) {
            add(steps, "passed", facts.passedMinor());
        }
        add(steps, "here", sum(reported, facts, false));
        add(steps, "not-here", -sum(reported, facts, true));
        Amount start = Amount.of(facts.salesMinor() - facts.feeMinor() - facts.refundMinor());
        Amount explained =
                steps.stream().map(Step::amount).collect(Amount.sum()).plus(start);
        return new GrossBridge(start, List.copyOf(steps), explained, reported.amount());
    }

    /** What is on the other side: dated within the time and not in the report, or the other way round. */
    private static long sum(GrossReported reported, GrossFacts facts, boolean within) {
        return facts.otherSide().stream()
                .filter(paid -> reported.holds(paid.docDate()) == within)
                .mapToLong(GrossFacts.Paid::amountMinor)
                .sum();
    }

    private static void add(List<Step> steps, String reason, long minor) {
        if (minor != 0) {
            steps.add(new Step(reason, Amount.of(minor)));
        }
    }

    public Amount unexplained() {
        return reported.minus(explained);
    }
}
