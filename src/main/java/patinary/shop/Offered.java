package patinary.shop;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.joda.money.CurrencyUnit;
import patinary.web.Choice;

/** The answers that setup and settings offer to choose from. */
final class Offered {

    private Offered() {}

    /** Every currency a shop can keep books in, by its three letters (ISO 4217, as Joda-Money carries it). */
    static List<Choice> currencies() {
        return CurrencyUnit.registeredCurrencies().stream()
                .filter(unit -> !unit.isPseudoCurrency())
                .map(unit -> Choice.named(unit.getCode(), unit.getCode() + " – " + nameOf(unit)))
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

    static List<Choice> timeZones() {
        return ZoneId.getAvailableZoneIds().stream()
                .filter(zone -> zone.contains("/") && !zone.startsWith("Etc/") && !zone.startsWith("SystemV/")
                        || zone.equals("UTC"))
                .sorted()
                .map(zone -> Choice.named(zone, zone.replace('_', ' ')))
                .toList();
    }

    private static String nameOf(CurrencyUnit unit) {
        try {
            return unit.toCurrency().getDisplayName(Locale.ENGLISH);
        } catch (IllegalArgumentException unknownToThePlatform) {
            return "";
        }
    }
}
