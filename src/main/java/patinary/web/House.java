package patinary.web;

import java.time.ZoneId;
import patinary.money.ShopCurrency;

/** What the shell must know of the shop it stands around. The shop module answers. */
public interface House {

    /** Whether the shop has been set up. The other answers are defined only then. */
    boolean isOpen();

    /** The shop's name as the owner wrote it. */
    String name();

    /** The one currency of the shop: reads and writes amounts. */
    ShopCurrency currency();

    /** Where the shop's days begin and end. */
    ZoneId zone();
}
