package patinary.shop;

import java.text.Collator;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import patinary.web.Choice;
import patinary.web.Tongue;

/** The answers that setup and settings offer to choose from. */
final class Offered {

    private static final String WORLD_CLOCK = "UTC";

    private Offered() {}

    /**
     * Every currency that is some country's money today, by its three letters. The platform's table of ISO 4217 says which
     * these are, with the days on which a country changed its money; its list of currencies has those that are no more too.
     */
    static List<Choice> currencies(Locale locale) {
        Set<Currency> inUse = Tongue.countries().stream()
                .map(Offered::moneyOf)
                .flatMap(Optional::stream)
                .collect(Collectors.toSet());
        return CurrencyUnit.registeredCurrencies().stream()
                .filter(unit -> !unit.isPseudoCurrency())
                .map(CurrencyUnit::getCode)
                .map(Currency::getInstance)
                .filter(inUse::contains)
                .map(money -> Choice.named(
                        money.getCurrencyCode(), money.getCurrencyCode() + " – " + money.getDisplayName(locale)))
                .toList();
    }

    static List<Choice> taxTables() {
        return List.of(
                Choice.said("us-schedule-c", "shop.tax.us-schedule-c"),
                Choice.said("uk-self-employment-short", "shop.tax.uk-self-employment-short"),
                Choice.said("plain", "shop.tax.plain"));
    }

    static List<Choice> costingMethods() {
        return List.of(Choice.said("FIFO", "shop.costing.FIFO"), Choice.said("AVERAGE", "shop.costing.AVERAGE"));
    }

    static List<Choice> next() {
        return List.of(
                Choice.said("later", "shop.setup.next.later"), Choice.said("opening", "shop.setup.next.opening"));
    }

    /** Each language by the name that it calls itself. */
    static List<Choice> languages() {
        return Stream.of(Tongue.values())
                .map(tongue -> Choice.said(tongue.code(), "shop.language." + tongue.code()))
                .toList();
    }

    /** Every country of ISO 3166-1, by its name in the language of the page. */
    static List<Choice> countries(Locale locale) {
        Collator order = Collator.getInstance(locale);
        return Tongue.countries().stream()
                .map(code -> Choice.named(code, Tongue.ENGLISH.in(code).getDisplayCountry(locale)))
                .sorted(Comparator.comparing(Choice::text, order))
                .toList();
    }

    static List<Choice> timeZones() {
        return ZoneId.getAvailableZoneIds().stream()
                .filter(zone -> zone.contains("/") && !zone.startsWith("Etc/") && !zone.startsWith("SystemV/")
                        || zone.equals(WORLD_CLOCK))
                .sorted()
                .map(zone -> Choice.named(zone, zone.replace('_', ' ')))
                .toList();
    }

    /** A machine's own zone, where it says a place; one that runs by the world's clock does not know where the shop is. */
    static String placeOf(ZoneId machine) {
        boolean place = !machine.getId().equals(WORLD_CLOCK)
                && timeZones().stream().anyMatch(choice -> choice.value().equals(machine.getId()));
        return place ? machine.getId() : "";
    }

    /** The money of a country; Antarctica has none. */
    private static Optional<Currency> moneyOf(String country) {
        return Optional.ofNullable(Currency.getInstance(Tongue.ENGLISH.in(country)));
    }
}
