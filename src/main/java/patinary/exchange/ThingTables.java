package patinary.exchange;

import static patinary.exchange.TableBuilder.table;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.joda.money.IllegalCurrencyException;
import patinary.measure.NamedMeasure;
import patinary.measure.Shape;
import patinary.money.ShopCurrency;
import patinary.web.Tongue;

/** The files of the shop itself and of what there is. */
final class ThingTables {

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
                    .done(),
            named("style", 120).done(),
            named("object_kind", 120)
                    .decimal("area_cm2", 16, 14)
                    .aboveZero()
                    .optional()
                    .later()
                    .done(),
            named("supply_line", 120).text("maker", 120).done(),
            table("supply")
                    .key("id")
                    .key("supply_line_id", "name")
                    .id("id")
                    .ref("supply_line_id", "supply_line")
                    .name("name", 120)
                    .words("dimension", "VOLUME", "MASS", "LENGTH", "AREA", "COUNT")
                    .amount("retail_price")
                    .zeroOrMore()
                    .optional()
                    .decimal("low_quantity", 16, 14)
                    .zeroOrMore()
                    .optional()
                    .quantity("empty_grams")
                    .optional()
                    .later()
                    .quantity("grams_per_ml")
                    .optional()
                    .later()
                    .words("wear", "AT_ONCE", "BY_USE")
                    .optional()
                    .later()
                    .done(),
            named(table("supply_pack")),
            named(table("supply_measure")),
            table("bundle")
                    .key("id")
                    .id("id")
                    .name("name", 120)
                    .amount("price")
                    .zeroOrMore()
                    .column("removed", Type.YES_NO)
                    .done(),
            table("bundle_part")
                    .key("bundle_id", "line")
                    .key("bundle_id", "supply_id")
                    .ref("bundle_id", "bundle")
                    .line()
                    .ref("supply_id", "supply")
                    .text("typed", 80)
                    .quantity("quantity")
                    .done(),
            table("finish")
                    .key("id")
                    .id("id")
                    .name("name", 120)
                    .text("note", 2000)
                    .column("removed", Type.YES_NO)
                    .done(),
            finishStep(),
            table("finish_supply")
                    .key("finish_id", "line")
                    .ref("finish_id", "finish")
                    .line()
                    .column("step", Type.WHOLE)
                    .aboveZero()
                    .ref("supply_id", "supply")
                    .text("typed", 80)
                    .quantity("quantity")
                    .decimal("per_cm2", 16, 14)
                    .aboveZero()
                    .optional()
                    .within("finish_step", "finish_id", "step")
                    .done(),
            table("supply_measure_change")
                    .key("supply_id", "name", "from_day")
                    .ref("supply_id", "supply")
                    .name("name", 60)
                    .column("from_day", Type.DATE)
                    .quantity("was_quantity")
                    .quantity("now_quantity")
                    .done(),
            table("piece")
                    .key("id")
                    .key("code")
                    .id("id")
                    .name("code", 20)
                    .text("title", 200)
                    .ref("kind_id", "object_kind")
                    .optional()
                    .ref("style_id", "style")
                    .optional()
                    .text("material", 60)
                    .decimal("area_cm2", 16, 14)
                    .aboveZero()
                    .optional()
                    .text("place", 60)
                    .text("note", 2000)
                    .ref("planned_finish_id", "finish")
                    .optional()
                    .later()
                    .words("shape", Stream.of(Shape.values()).map(Shape::name).toArray(String[]::new))
                    .optional()
                    .later()
                    .name("shape_measures", 200)
                    .optional()
                    .later()
                    .rule(Rule.together("shape", "shape_measures"))
                    .done(),
            table("piece_tag")
                    .key("piece_id", "tag")
                    .ref("piece_id", "piece")
                    .name("tag", 60)
                    .done(),
            table("label_setting")
                    .key("name")
                    .name("name", 20)
                    .text("setting", 200)
                    .done(),
            labelGrid(),
            table("packing_list")
                    .key("id")
                    .id("id")
                    .name("title", 60)
                    .column("market_day", Type.DATE)
                    .ref("channel_id", "channel")
                    .optional()
                    .text("note", 1000)
                    .done(),
            table("packing_piece")
                    .key("packing_list_id", "piece_id")
                    .ref("packing_list_id", "packing_list")
                    .ref("piece_id", "piece")
                    .column("packed", Type.YES_NO)
                    .column("home", Type.YES_NO)
                    .text("place_before", 60)
                    .done());

    private ThingTables() {}

    private static ArchiveTable finishStep() {
        return table("finish_step")
                .key("finish_id", "line")
                .ref("finish_id", "finish")
                .line()
                .name("what", 500)
                .column("minutes", Type.WHOLE)
                .zeroOrMore()
                .column("wait_from", Type.WHOLE)
                .aboveZero()
                .optional()
                .column("wait_to", Type.WHOLE)
                .aboveZero()
                .optional()
                .text("wait_words", 120)
                .text("cautions", 400)
                .rule(Rule.together("wait_from", "wait_to"))
                .done();
    }

    private static ArchiveTable labelGrid() {
        return named("label_grid", 60)
                .words("paper", "LETTER", "A4", "ROLL")
                .column("grid_rows", Type.WHOLE)
                .aboveZero()
                .column("grid_columns", Type.WHOLE)
                .aboveZero()
                .decimal("left_mm", 5, 4)
                .zeroOrMore()
                .decimal("top_mm", 5, 4)
                .zeroOrMore()
                .decimal("width_mm", 5, 4)
                .aboveZero()
                .decimal("height_mm", 5, 4)
                .aboveZero()
                .decimal("across_mm", 5, 4)
                .zeroOrMore()
                .decimal("down_mm", 5, 4)
                .zeroOrMore()
                .done();
    }

    private static TableBuilder named(String table, int size) {
        return table(table).key("id").key("name").id("id").name("name", size);
    }

    private static ArchiveTable named(TableBuilder measure) {
        return measure.key("supply_id", "name")
                .ref("supply_id", "supply")
                .name("name", 60)
                .quantity("quantity")
                .rule(new Rule("name", "no-name", row -> NamedMeasure.isName(row.word("name"))))
                .done();
    }

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
                .rule(new Rule("minor_digits", "minor-digits", ThingTables::digitsOfCurrency))
                .rule(new Rule("time_zone", "time-zone", row -> isZone(row.word("time_zone"))))
                .rule(new Rule("country", "country", ThingTables::isCountry))
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
