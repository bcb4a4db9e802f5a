package patinary.shop;

import java.text.Collator;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import patinary.web.Choice;
import patinary.web.Tongue;

/** The answers that setup and settings offer to choose from. */
final class Offered {

    private Offered() {}

    /** Every currency a shop can keep books in, by its three letters (ISO 4217, as Joda-Money carries it). */
    static List<Choice> currencies(Locale locale) {
        return CurrencyUnit.registeredCurrencies().stream()
                .filter(unit -> !unit.isPseudoCurrency())
                .map(unit -> Choice.named(unit.getCode(), unit.getCode() + " – " + nameOf(unit, locale)))
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
                        || zone.equals("UTC"))
                .sorted()
                .map(zone -> Choice.named(zone, zone.replace('_', ' ')))
                .toList();
    }

    private static String nameOf(CurrencyUnit unit, Locale locale) {
        try {
            return unit.toCurrency().getDisplayName(locale);
        } catch (IllegalArgumentException unknownToThePlatform) {
            return "";
        }
    }
}
