package patinary.web;

import java.util.List;

/**
 * The pages that open without reception and before the sign-in. Whoever is not signed in gets a shell without anything of
 * the shop; a phone keeps a copy of that shell.
 */
public final class PhonePages {

    /** What is entered on a phone and not yet sent. */
    public static final String WAITING = "/waiting";

    public static final List<String> ALL = List.of("/buy", "/bench/now", "/stall", "/count", WAITING);

    private PhonePages() {}
}
