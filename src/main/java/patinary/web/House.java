package patinary.web;

import java.time.ZoneId;
import java.util.Locale;
import patinary.money.ShopCurrency;

/** What the shell must know of the shop it stands around. The shop module answers. */
public interface House {

    /** Whether the shop has been set up. The other answers are defined only then. */
    boolean isOpen();

    /** The shop's name as the owner wrote it. */
    String name();

    /** The one currency of the shop: reads and writes amounts. */
    ShopCurrency currency();

    /** The language of the pages, and the country by whose customs days, numbers and amounts are written. */
    Locale locale();

    /** Where the shop's days begin and end. */
    ZoneId zone();

    /**
     * Whether the way to a page is closed to whoever is signed in, so that pages leave it out. Before the sign-in none is:
     * there a way leads through it.
     *
     * @param method {@code GET} or {@code POST}
     * @param path a path of the shop, without what follows a question mark
     */
    boolean isClosed(String method, String path);

    /** Whether costs, profit and what the shop comes to are shown to whoever is signed in. */
    boolean tellsCosts();
}
