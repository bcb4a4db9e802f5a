package patinary.insight;

import patinary.money.Amount;

/**
 * One bar of a picture that stands beside its figure in a table: from a place, so wide, of {@value #WIDE}.
 *
 * @param from where it begins
 * @param wide how wide it is
 * @param zero where nothing stands, so that what lies below it can be seen
 * @param below whether it is a figure below zero, or one that takes away; drawn hollow
 */
record Bar(int from, int wide, int zero, boolean below) {

    static final int WIDE = 200;

    /** The range that all bars of one picture share; amounts in minor units. */
    record Scale(long low, long high) {

        /** Always with zero in it. */
        static Scale of(Iterable<Amount> ends) {
            long low = 0;
            long high = 0;
            for (Amount end : ends) {
                low = Math.min(low, end.minor());
                high = Math.max(high, end.minor());
            }
            return new Scale(low, high);
        }

        Bar bar(Amount from, Amount to) {
            int start = place(Math.min(from.minor(), to.minor()));
            int end = place(Math.max(from.minor(), to.minor()));
            return new Bar(start, end - start, place(0), to.compareTo(from) < 0);
        }

        private int place(long minor) {
            return high == low ? 0 : Math.toIntExact(Math.round((double) (minor - low) / (high - low) * WIDE));
        }
    }
}
