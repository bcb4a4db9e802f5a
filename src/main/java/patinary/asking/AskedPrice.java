package patinary.asking;

import java.util.Optional;
import patinary.money.Amount;
import patinary.money.PriceEndings;
import patinary.selling.Terms;
import patinary.selling.WhatToAsk;

/**
 * A price to ask.
 *
 * @param least the smallest price of which, and of every higher one, enough remains
 * @param asked the smallest such price with one of her own endings
 * @param remains of the asked price
 */
record AskedPrice(Amount least, Amount asked, Amount remains) {

    /** Nothing where no price leaves as much. */
    static Optional<AskedPrice> of(Terms terms, Amount need, PriceEndings endings) {
        return WhatToAsk.smallest(terms, need).map(least -> {
            // Of every price from the least on enough remains, so the next one with an ending is the smallest of those.
            Amount asked = endings.upFrom(least);
            return new AskedPrice(least, asked, terms.remains(asked).net());
        });
    }
}
