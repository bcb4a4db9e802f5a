package patinary.vitals;

import java.util.List;

/** The pages made for a phone, whose weight and speed are watched. */
final class PhonePages {

    static final List<String> ALL = List.of("/buy", "/stall", "/bench/now", "/waiting", "/receipts/new");

    private PhonePages() {}
}
