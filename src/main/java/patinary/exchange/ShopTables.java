package patinary.exchange;

import static patinary.exchange.TableBuilder.named;
import static patinary.exchange.TableBuilder.table;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import org.joda.money.IllegalCurrencyException;
import patinary.money.ShopCurrency;
import patinary.web.Tongue;

/** The files of the shop itself: what it aims at, where it buys and sells, where its money is, what its channels keep. */
final class ShopTables {

    static final String SHOP = "shop";

    static final List<ArchiveTable> ALL = List.of(
            shop(),
            table("aim")
                    .key("shop_id")
                    .column("shop_id", Type.WHOLE)
                    .aboveZero()
                    .column("horizon_days", Type.WHOLE)
                    .aboveZero()
                    .amount("salvage")
                    .zeroOrMore()
                    .amount("target")
                    .zeroOrMore()
                    .percent("target_percent")
                    .zeroOrMore()
                    .optional()
                    .percent("purchase_tax_percent")
                    .zeroOrMore()
                    .text("price_endings", 120)
                    .done(),
            named("source", 120)
                    .text("note", 1000)
                    .text("resale_certificate", 60)
                    .percent("tax_percent")
                    .zeroOrMore()
                    .optional()
                    .done(),
            named("quick_percent", 60).line().percent("percent").aboveZero().done(),
            named("money_place", 120)
                    .words("kind", "CASH", "BANK", "CARD", "CHANNEL")
                    .done(),
            named("channel", 120)
                    .ref("money_place_id", "money_place")
                    .column("passes_tax", Type.YES_NO)
                    .done(),
            table("channel_fee")
                    .key("channel_id", "valid_from")
                    .ref("channel_id", "channel")
                    .column("valid_from", Type.DATE)
                    .percent("percent")
                    .zeroOrMore()
                    .amount("fixed")
                    .zeroOrMore()
                    .words("base", "PRICE", "PRICE_AND_SHIPPING", "ALL_WITH_TAX")
                    .optional()
                    .later()
                    .amount("least")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .amount("most")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .amount("above")
                    .aboveZero()
                    .optional()
                    .later()
                    .percent("above_percent")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .amount("further_above")
                    .aboveZero()
                    .optional()
                    .later()
                    .percent("further_percent")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .column("above_on_whole", Type.YES_NO)
                    .optional()
                    .later()
                    .percent("payment_percent")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .amount("payment_fixed")
                    .zeroOrMore()
                    .optional()
                    .later()
                    .column("per_offer", "offer_minor", Type.AMOUNT)
                    .zeroOrMore()
                    .optional()
                    .later()
                    .column("per_month", "month_minor", Type.AMOUNT)
                    .zeroOrMore()
                    .optional()
                    .later()
                    .rule(Rule.together("above", "above_percent"))
                    .rule(Rule.together("further_above", "further_percent"))
                    .rule(new Rule("further_above", "needed", row -> !row.has("further_above") || row.has("above")))
                    .done(),
            table("channel_usual")
                    .key("channel_id")
                    .ref("channel_id", "channel")
                    .amount("shipping")
                    .zeroOrMore()
                    .amount("outlay")
                    .zeroOrMore()
                    .percent("tax_percent")
                    .zeroOrMore()
                    .column("shipping_taxed", Type.YES_NO)
                    .done(),
            table("discount_code")
                    .key("id")
                    .key("code")
                    .id("id")
                    .name("code", 40)
                    .column("percent", Type.PERCENT)
                    .optional()
                    .amount("amount")
                    .zeroOrMore()
                    .optional()
                    .column("valid_from", Type.DATE)
                    .column("valid_to", Type.DATE)
                    .optional()
                    .text("note", 500)
                    .rule(Rule.exactlyOne("percent", "amount"))
                    .rule(Rule.notBefore("valid_to", "valid_from"))
                    .done(),
            named("tax_place", 120).done(),
            table("tax_place_rate")
                    .key("tax_place_id", "valid_from")
                    .ref("tax_place_id", "tax_place")
                    .column("valid_from", Type.DATE)
                    .percent("percent")
                    .zeroOrMore()
                    .column("shipping_taxed", Type.YES_NO)
                    .done(),
            table("channel_tax_place")
                    .key("channel_id")
                    .ref("channel_id", "channel")
                    .ref("tax_place_id", "tax_place")
                    .done(),
            table("channel_unlisted")
                    .key("channel_id")
                    .ref("channel_id", "channel")
                    .done(),
            table("mark_down_step")
                    .key("after_days")
                    .column("after_days", Type.WHOLE)
                    .aboveZero()
                    .percent("percent")
                    .aboveZero()
                    .done());

    private ShopTables() {}

    private static ArchiveTable shop() {
        return table(SHOP)
                .key("name")
                .name("name", 80)
                .name("currency", 3)
                .column("minor_digits", Type.WHOLE)
                .zeroOrMore()
                .words("costing_method", "FIFO", "AVERAGE")
                .amount("hourly_rate")
                .zeroOrMore()
                .words("tax_table", "us-schedule-c", "uk-self-employment-short", "plain")
                .column("first_day", Type.DATE)
                .name("time_zone", 60)
                .words("language", "en", "es")
                .optional()
                .later()
                .name("country", 2)
                .optional()
                .later()
                .rule(new Rule("minor_digits", "minor-digits", ShopTables::digitsOfCurrency))
                .rule(new Rule("time_zone", "time-zone", row -> isZone(row.word("time_zone"))))
                .rule(new Rule("country", "country", ShopTables::isCountry))
                .done();
    }

    private static boolean digitsOfCurrency(Row row) {
        try {
            int digits = ShopCurrency.ofCode(row.word("currency")).digits();
            return row.word("minor_digits").equals(String.valueOf(digits));
        } catch (IllegalCurrencyException unknown) {
            return false;
        }
    }

    private static boolean isCountry(Row row) {
        return !row.has("country") || Tongue.countries().contains(row.word("country"));
    }

    private static boolean isZone(String name) {
        try {
            ZoneId.of(name);
            return true;
        } catch (DateTimeException unknown) {
            return false;
        }
    }
}
