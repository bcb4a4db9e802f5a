package patinary.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** What the layout asks while it is drawn: the ways through the shop, where we are, who is here. */
@Component("shell")
public class Shell {

    private static final List<NavEntry> ENTRIES = List.of(
            new NavEntry("home", "/", "make", true),
            new NavEntry("receipts", "/receipts", "make", true),
            new NavEntry("bench", "/bench", "make", true),
            new NavEntry("pieces", "/pieces", "make", false),
            new NavEntry("supplies", "/supplies", "make", false),
            new NavEntry("offers", "/offers", "sell", false),
            new NavEntry("sales", "/sales", "sell", true),
            new NavEntry("expenses", "/expenses", "sell", false),
            new NavEntry("moves", "/moves", "look", false),
            new NavEntry("year", "/year", "look", false),
            new NavEntry("shop", "/shop", "look", false));

    private final House house;

    Shell(House house) {
        this.house = house;
    }

    public List<String> groups() {
        return ENTRIES.stream().map(NavEntry::group).distinct().toList();
    }

    /** The entries under one heading. */
    public List<NavEntry> entries(String group) {
        return ENTRIES.stream().filter(entry -> entry.group().equals(group)).toList();
    }

    /** The entries in the bar at the foot of a phone, or those behind "More". */
    public List<NavEntry> bar(boolean main) {
        return ENTRIES.stream().filter(entry -> entry.main() == main).toList();
    }

    /** The value of {@code aria-current} for an entry; null, which leaves the attribute out, for all others. */
    public @Nullable String current(NavEntry entry) {
        return entry.covers(path()) ? "page" : null;
    }

    /** Whether the page stands behind "More" on a phone. */
    public boolean currentIsBehindMore() {
        return bar(false).stream().anyMatch(entry -> entry.covers(path()));
    }

    public String shopName() {
        return house.isOpen() ? house.name() : "Patinary";
    }

    /** The three letters of the shop's currency. */
    public String currencyCode() {
        return house.currency().code();
    }

    public boolean isSignedIn() {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        return who != null && who.isAuthenticated() && !(who instanceof AnonymousAuthenticationToken);
    }

    /** The address of this list with another page's number and everything else kept. */
    public String pageLink(int number) {
        var here = ServletUriComponentsBuilder.fromRequest(request())
                .replaceQueryParam("page", number)
                .build();
        return here.getPath() + "?" + here.getQuery();
    }

    private static String path() {
        HttpServletRequest request = request();
        Object failed = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        return failed instanceof String path ? path : request.getRequestURI();
    }

    private static HttpServletRequest request() {
        return ((ServletRequestAttributes) RequestContextHolder.currentRequestAttributes()).getRequest();
    }
}
