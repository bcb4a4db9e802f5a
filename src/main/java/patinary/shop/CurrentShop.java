package patinary.shop;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;
import patinary.ledger.StockMethod;
import patinary.money.Amount;
import patinary.money.ShopCurrency;
import patinary.web.Tongue;

/**
 * The settings other modules count with. Read once per request, so that one page never mixes two states and a change
 * made by another copy of the program is seen at the next request.
 */
@Component
public class CurrentShop {

    private static final String KEPT = CurrentShop.class.getName();

    private final Shops shops;
    private final Clock clock;
    private final Map<String, ShopCurrency> currencies = new ConcurrentHashMap<>();

    CurrentShop(Shops shops, Clock clock) {
        this.shops = shops;
        this.clock = clock;
    }

    /** Whether the shop has been set up; everything else here throws {@link IllegalStateException} before that. */
    public boolean isOpen() {
        return find().isPresent();
    }

    public String name() {
        return shop().name;
    }

    /** The shop's one currency, which reads and writes amounts. */
    public ShopCurrency currency() {
        return currencies.computeIfAbsent(shop().currency, ShopCurrency::ofCode);
    }

    public StockMethod costingMethod() {
        return shop().costingMethod;
    }

    /** What an hour of the owner's work is worth to her; for true cost only, never for tax. */
    public Amount hourlyRate() {
        return Amount.of(shop().hourlyRateMinor);
    }

    /** The name of the tax table the year is sorted by. */
    public String taxTable() {
        return shop().taxTable;
    }

    /** The day the books begin: nothing is recorded before it but the opening stock. */
    public LocalDate firstDay() {
        return shop().firstDay;
    }

    public ZoneId zone() {
        return ZoneId.of(shop().timeZone);
    }

    /** The language that the pages speak, by the customs of the shop's country; English before there is a shop. */
    public Locale locale() {
        return find().map(
                        shop -> Tongue.of(shop.language).orElse(Tongue.ENGLISH).in(shop.country))
                .orElse(Locale.US);
    }

    /** Today, where the shop is. */
    public LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone());
    }

    /** Forgets what this request has read, after a change. */
    public void changed() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request != null) {
            request.removeAttribute(KEPT, RequestAttributes.SCOPE_REQUEST);
        }
    }

    private Shop shop() {
        return find().orElseThrow(() -> new IllegalStateException("The shop has not been set up yet"));
    }

    private Optional<Shop> find() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request == null) {
            return shops.findById(Shop.ONLY);
        }
        Object kept = request.getAttribute(KEPT, RequestAttributes.SCOPE_REQUEST);
        if (kept instanceof Shop shop) {
            return Optional.of(shop);
        }
        Optional<Shop> found = shops.findById(Shop.ONLY);
        found.ifPresent(shop -> request.setAttribute(KEPT, shop, RequestAttributes.SCOPE_REQUEST));
        return found;
    }
}
