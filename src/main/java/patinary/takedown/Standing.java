package patinary.takedown;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * A channel and the offers that may still stand there.
 *
 * @param offers the one that has been over for longest first
 * @param more how many there are beside these
 */
record Standing(UUID channelId, String channel, List<Offer> offers, long more) {

    /**
     * An offer that is over.
     *
     * @param sold whether a piece of it was sold; otherwise it was withdrawn, or its piece is gone
     * @param endedOn the day it was sold, or its last day
     * @param days since then
     * @param stillThere how many like it are on offer there yet: then it is one less, and not the last
     */
    record Offer(UUID offerId, String title, boolean sold, LocalDate endedOn, long days, long stillThere) {}
}
