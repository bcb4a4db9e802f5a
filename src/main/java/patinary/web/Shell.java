package patinary.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
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

    private static final NavEntry YEAR = new NavEntry("year", "/year", "look");

    private static final List<NavEntry> ENTRIES = List.of(
            new NavEntry("home", "/", "make"),
            new NavEntry("receipts", "/receipts", "make"),
            new NavEntry("bench", "/bench", "make"),
            new NavEntry("pieces", "/pieces", "make"),
            new NavEntry("supplies", "/supplies", "make"),
            new NavEntry("offers", "/offers", "sell"),
            new NavEntry("sales", "/sales", "sell"),
            new NavEntry("expenses", "/expenses", "sell"),
            new NavEntry("moves", "/moves", "look"),
            YEAR,
            new NavEntry("shop", "/shop", "look"));

    private static final List<NavEntry> ON_THE_WAY = List.of(
            new NavEntry("buy", "/buy", "phone"),
            new NavEntry("now", "/bench/now", "phone"),
            new NavEntry("stall", "/stall", "phone"));

    private static final NavEntry WAITING = new NavEntry("waiting", PhonePages.WAITING, "phone");

    private static final Set<String> OF_EVERY_LIST = Set.of("q", "page");

    private final House house;

    Shell(House house) {
        this.house = house;
    }

    /** Whether costs and profit are shown: to all but a helper. */
    public boolean tellsCosts() {
        return house.tellsCosts();
    }

    /** Whether only the years are open: for an accountant. */
    public boolean isYearsOnly() {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        return who != null
                && who.getAuthorities().stream().anyMatch(one -> "ROLE_ACCOUNTANT".equals(one.getAuthority()));
    }

    /** Where the name of the shop leads. */
    public String home() {
        return isYearsOnly() ? YEAR.path() : "/";
    }

    private List<NavEntry> open() {
        return ENTRIES.stream().filter(this::isOpen).toList();
    }

    private boolean isOpen(NavEntry entry) {
        return !house.isClosed("GET", entry.path());
    }

    public List<String> groups() {
        return open().stream().map(NavEntry::group).distinct().toList();
    }

    /** The entries under one heading. */
    public List<NavEntry> entries(String group) {
        return open().stream().filter(entry -> entry.group().equals(group)).toList();
    }

    /** The entries in the bar at the foot of a phone: what is done with the phone in one hand. */
    public List<NavEntry> bar() {
        if (isYearsOnly()) {
            return List.of(YEAR);
        }
        Stream<NavEntry> before = isSignedIn() ? ENTRIES.stream().limit(1) : Stream.empty();
        Stream<NavEntry> after = isSignedIn() ? Stream.empty() : Stream.of(WAITING);
        return Stream.of(before, ON_THE_WAY.stream(), after)
                .flatMap(Function.identity())
                .toList();
    }

    /** The entries behind "More" in that bar. */
    public List<NavEntry> more() {
        return Stream.concat(ENTRIES.stream().skip(1), Stream.of(WAITING))
                .filter(this::isOpen)
                .toList();
    }

    /** Whether the page is one that opens without reception and before the sign-in. */
    public boolean isPhonePage() {
        return PhonePages.ALL.contains(path());
    }

    /** The way to the sign-in that leads back to this page. */
    public String signInLink() {
        return "/phone/sign-in?back=" + (isPhonePage() ? path() : PhonePages.WAITING);
    }

    /** The value of {@code aria-current} for an entry; null, which leaves the attribute out, for all others. */
    public @Nullable String current(NavEntry entry) {
        return entry.covers(path()) ? "page" : null;
    }

    /** Whether the page stands behind "More" on a phone. */
    public boolean currentIsBehindMore() {
        String path = path();
        return bar().stream().noneMatch(entry -> entry.covers(path))
                && more().stream().anyMatch(entry -> entry.covers(path));
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
        return pageLink("page", number);
    }

    /** The same for the second list of a page, whose numbers stand under a word of their own. */
    public String pageLink(String word, int number) {
        var here = ServletUriComponentsBuilder.fromRequest(request())
                .replaceQueryParam(word, number)
                .build();
        return here.getPath() + "?" + here.getQuery();
    }

    /** Whether a list is narrowed by more than the words looked for, so that what narrows it stands open. */
    public boolean narrows() {
        return request().getParameterMap().entrySet().stream()
                .filter(answer -> !OF_EVERY_LIST.contains(answer.getKey()))
                .filter(answer -> !answer.getKey().startsWith("_"))
                .flatMap(answer -> Stream.of(answer.getValue()))
                .anyMatch(chosen -> !chosen.isBlank());
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
