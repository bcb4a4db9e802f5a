package patinary.asking;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import patinary.money.Amount;

/**
 * What a channel charges that no sale bears, and that is not settled yet.
 *
 * @param offerId the offer that was put up; null where it is for a month
 * @param title the offer's title, or nothing
 * @param month the first of the month; null where it is for an offer
 * @param day the day it fell due: the offer's first day, or the first of the month
 * @param amount by the rule that held on that day
 */
record Charge(
        UUID channelId,
        String channel,
        UUID moneyPlaceId,
        @Nullable UUID offerId,
        String title,
        @Nullable LocalDate month,
        LocalDate day,
        Amount amount) {

    /** What the form calls it. */
    public String key() {
        return channelId + "/" + (offerId == null ? month : offerId);
    }

    /** The category of the expense that settles it. */
    String category() {
        return offerId == null ? "booth_rent" : "channel_fees";
    }
}
