package patinary.phone;

import java.util.List;

/** The pages that open without reception and before the sign-in. */
final class PhonePages {

    static final String WAITING = "/waiting";
    static final List<String> ALL = List.of("/buy", "/stall", "/bench/now", WAITING);

    private PhonePages() {}
}
