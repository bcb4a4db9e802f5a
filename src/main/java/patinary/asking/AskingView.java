package patinary.asking;

import java.util.List;
import patinary.money.PriceEndings;

/**
 * All that the page says for the pieces.
 *
 * @param uncosted whether something was used on them whose cost is not known yet, so that the floor is too low
 * @param minutesKnown whether any work is noted
 * @param past what offers of things like them asked
 * @param latest the latest of those offers
 */
record AskingView(
        List<AskedPiece> pieces,
        Needs needs,
        boolean uncosted,
        boolean minutesKnown,
        PriceEndings endings,
        List<ChannelPrices> channels,
        List<PastPrices> past,
        List<PastOffer> latest) {}
