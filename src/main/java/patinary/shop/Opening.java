package patinary.shop;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import patinary.ledger.StockMethod;
import patinary.money.ShopCurrency;
import patinary.web.Tongue;

/** Opens the shop: the owner and the settings come into being together, or not at all. */
@Service
class Opening {

    private final Shops shops;
    private final People people;
    private final PasswordEncoder passwords;
    private final MoneyPlaces places;
    private final MessageSource messages;
    private final Clock clock;

    Opening(
            Shops shops,
            People people,
            PasswordEncoder passwords,
            MoneyPlaces places,
            MessageSource messages,
            Clock clock) {
        this.shops = shops;
        this.people = people;
        this.passwords = passwords;
        this.places = places;
        this.messages = messages;
        this.clock = clock;
    }

    /**
     * @throws org.springframework.dao.DataIntegrityViolationException where two people press the button at once: the
     *     shop's key lets only the first through
     */
    @Transactional
    public void open(SetupForm form) {
        if (people.existsByRole(Role.OWNER)) {
            throw new IllegalStateException("The shop has an owner already");
        }
        ShopCurrency currency = ShopCurrency.ofCode(form.currency);
        String hash = Objects.requireNonNull(passwords.encode(form.password));
        people.save(new Person(UUID.randomUUID(), form.ownerName, hash, Role.OWNER, clock.instant()));
        shops.save(shop(form, currency));
        Locale locale = Tongue.of(form.language).orElse(Tongue.ENGLISH).in(form.country);
        place("shop.place.cash", locale, MoneyPlace.Kind.CASH);
        place("shop.place.bank", locale, MoneyPlace.Kind.BANK);
    }

    /** Every shop has these two; she renames them or adds others. */
    private void place(String name, Locale locale, MoneyPlace.Kind kind) {
        String text = messages.getMessage(name, null, locale);
        places.save(new MoneyPlace(UUID.randomUUID(), text, kind));
    }

    private Shop shop(SetupForm form, ShopCurrency currency) {
        Shop shop = new Shop();
        shop.name = form.shopName;
        shop.currency = currency.code();
        shop.minorDigits = currency.digits();
        shop.costingMethod = StockMethod.valueOf(form.costingMethod);
        shop.hourlyRateMinor =
                form.hourlyRate.isBlank() ? 0 : currency.parse(form.hourlyRate).minor();
        shop.taxTable = form.taxTable;
        shop.firstDay = LocalDate.parse(form.firstDay);
        shop.timeZone = form.timeZone;
        shop.language = form.language;
        shop.country = form.country;
        shop.createdAt = clock.instant();
        return shop;
    }
}
