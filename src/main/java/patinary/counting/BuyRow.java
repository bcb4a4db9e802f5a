package patinary.counting;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.supplies.Supply;
import patinary.supplies.SupplyCatalog.Known;

/**
 * One supply with how long it lasts and what to buy of it. Quantities in its base unit.
 *
 * @param left on the bench and the retail shelf together; below zero where more was used than bought
 * @param rate how fast it goes; null where there is too little to tell
 * @param need what the pieces waiting for their finish will take
 * @param pieces how many pieces those are
 * @param source where it was bought last; null where it was not
 * @param pack in what it would be bought; null where no container is on record
 * @param packs how many containers to buy; 0 where none is needed
 * @param priceMinor what they would cost at the last price, before tax and discounts; null where that is not known
 */
record BuyRow(
        Known supply,
        BigDecimal left,
        @Nullable UseRate rate,
        BigDecimal need,
        long pieces,
        @Nullable Bought source,
        Supply.@Nullable Named pack,
        int packs,
        @Nullable Long priceMinor) {

    /** Buy before it lasts less than this; common practice, no source. */
    static final int WEEKS_AHEAD = 3;

    /** Buy for this long; common practice, no source. */
    static final int WEEKS_TO_BUY = 8;

    /** The last purchase: where, and what one container of that content cost. */
    record Bought(
            UUID supplyId,
            @Nullable UUID sourceId,
            @Nullable String source,
            long priceMinor,
            BigDecimal content) {}

    /** What the waiting pieces need. */
    record Need(UUID supplyId, BigDecimal quantity, long pieces) {

        static Need none(UUID supply) {
            return new Need(supply, BigDecimal.ZERO, 0);
        }
    }

    static BuyRow of(Known supply, BigDecimal left, @Nullable UseRate rate, Need need, @Nullable Bought source) {
        Supply.Named pack = pack(supply, source);
        BigDecimal missing = missing(supply, left, rate, need.quantity());
        int packs = missing.signum() <= 0
                ? 0
                : pack == null
                        ? 1
                        : missing.divide(pack.quantity(), 0, RoundingMode.CEILING)
                                .intValue();
        Long price = source == null || packs == 0
                ? null
                : price(source, pack == null ? source.content() : pack.quantity(), packs);
        return new BuyRow(supply, left, rate, need.quantity(), need.pieces(), source, pack, packs, price);
    }

    public UseRate.@Nullable Weeks lasts() {
        return rate == null ? null : rate.lasts(left.doubleValue());
    }

    boolean isWanted() {
        return packs > 0;
    }

    /** The line of a receipt that buys it: how many, the supply's id and the pack. */
    public String wish() {
        return packs + "*" + supply.id() + (pack == null ? "" : "/" + pack.name());
    }

    /** More than nothing where it is time to buy: to the mark, or for eight weeks, and for the waiting pieces. */
    private static BigDecimal missing(Known supply, BigDecimal left, @Nullable UseRate rate, BigDecimal need) {
        BigDecimal mark = supply.facts().low();
        boolean atMark = mark != null && left.compareTo(mark) <= 0;
        boolean soon = rate != null && rate.lasts(left.doubleValue()).middle() < WEEKS_AHEAD;
        boolean needed = need.signum() > 0 && left.compareTo(need) < 0;
        if (!atMark && !soon && !needed) {
            return BigDecimal.ZERO;
        }
        BigDecimal ahead = rate == null ? BigDecimal.ZERO : BigDecimal.valueOf(rate.perWeek() * WEEKS_TO_BUY);
        BigDecimal floor = mark == null ? BigDecimal.ZERO : mark;
        BigDecimal missing = ahead.max(floor).add(need).subtract(left);
        // At its mark and hardly used: one container lifts it above.
        return missing.signum() > 0 ? missing : BigDecimal.ONE.movePointLeft(14);
    }

    /** The pack bought last where it is still one, else the smallest. */
    private static Supply.@Nullable Named pack(Known supply, @Nullable Bought source) {
        return supply.facts().packs().stream()
                .filter(pack -> source != null && pack.quantity().compareTo(source.content()) == 0)
                .findFirst()
                .or(() -> supply.facts().packs().stream().findFirst())
                .orElse(null);
    }

    private static long price(Bought source, BigDecimal content, int packs) {
        return BigDecimal.valueOf(source.priceMinor())
                .multiply(content)
                .multiply(BigDecimal.valueOf(packs))
                .divide(source.content(), 0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}
