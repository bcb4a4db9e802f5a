package patinary.vitals;

import com.microsoft.playwright.Page;
import java.util.List;

/** The pages made for a phone, whose weight and speed are watched. */
final class PhonePages {

    private static final List<String> ALL = List.of("/buy", "/stall", "/bench/now", "/waiting", "/receipts/new");

    private PhonePages() {}

    /** Those of them that this build of the shop has, asked by a page of the shop itself. */
    static List<String> thatAnswer(Page signedIn) {
        return ALL.stream()
                .filter(path -> signedIn.evaluate("path => fetch(path).then(answer => answer.status)", path)
                        .equals(200))
                .toList();
    }
}
