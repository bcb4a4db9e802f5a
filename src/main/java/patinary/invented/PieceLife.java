package patinary.invented;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of one piece. Amounts in cents.
 *
 * @param number from 0; the pieces 2n and 2n + 1 come on one receipt
 * @param paid its price on the receipt
 * @param bench the stretches of work on it, in order; fewer where its time ends before
 * @param offer the last time it was put up for sale, if it was; of a set, the first piece has it
 */
record PieceLife(
        int number,
        LocalDate bought,
        int kind,
        int style,
        int material,
        long paid,
        List<Stretch> bench,
        @Nullable Offer offer) {

    /** One stretch of work. */
    record Stretch(LocalDate day, int minutes, List<Drop> uses, boolean mishap) {}

    /** So much of a supply, in its unit. */
    record Drop(int supply, int quantity) {}

    /**
     * A piece, or a set, put up for sale.
     *
     * @param together whether the next piece is part of it
     * @param channels which channels, by ordinal
     * @param lowered when the price was lowered, if it was
     * @param ended when it was withdrawn, if it was
     */
    record Offer(
            LocalDate day,
            boolean together,
            List<Channel> channels,
            long price,
            @Nullable LocalDate lowered,
            long lowPrice,
            @Nullable LocalDate ended,
            @Nullable Sold sold) {}

    /**
     * @param refunded when the buyer got the price back and the piece came back, if that happened
     */
    record Sold(
            LocalDate day,
            Channel channel,
            long price,
            long shipping,
            long fee,
            long carriage,
            @Nullable LocalDate refunded) {

        /** What the buyer pays. */
        long total() {
            return price + shipping;
        }
    }

    /** The receipt it came on. */
    int receipt() {
        return number / 2;
    }

    boolean isReady(Stretch stretch) {
        return bench.size() == Lives.STRETCHES && stretch == bench.get(Lives.STRETCHES - 1);
    }
}
