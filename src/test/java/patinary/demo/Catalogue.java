package patinary.demo;

import static patinary.demo.Draws.usd;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** What there is in the invented shop before anything happens. */
final class Catalogue {

    static final String CASH = "Cash box";
    static final String BANK = "Bank account of the shop";
    static final String CARD = "Her own card";
    static final String WEB = "Web payments balance";
    static final String QUAY = "Lantern Quay balance";

    static final String SITE = "Own web shop";
    /** The rent of the stall each month, in cents. */
    static final int RENT = 9000;

    static final String STALL = "Saturday stall";
    static final String MARKET = "Lantern Quay (invented marketplace)";

    /** Where all of the shop's own sales are taxed; draws no chance. */
    static final UUID COUNTY = UUID.nameUUIDFromBytes("Fallow County".getBytes(StandardCharsets.UTF_8));

    /** A code on the card that goes into the bag. */
    static final String THANKS = "THANKYOU";

    private static final UUID CODE = UUID.fromString("7d0f2c1e-4d55-4b8e-9a39-0c6d5a8a1b10");

    static final List<String> STYLES = List.of(
            "Marsh green and gilt", "Chalk and rope", "Midnight folk", "Washed linen", "Rust and rose", "Plain waxed");

    /** @param area the usual surface in square centimetres, invented */
    record Kind(String name, int value, int work, int area, List<String> materials) {}

    static final List<Kind> KINDS = List.of(
            new Kind("Tray", 3400, 2, 2600, List.of("oak", "pine", "tin")),
            new Kind("Box", 2600, 1, 2000, List.of("pine", "oak", "tin")),
            new Kind("Side table", 9800, 4, 11200, List.of("oak", "pine", "beech")),
            new Kind("Stool", 6400, 3, 4000, List.of("beech", "pine")),
            new Kind("Mirror", 7600, 3, 1600, List.of("plaster", "pine")),
            new Kind("Pair of candle holders", 2900, 1, 700, List.of("brass", "beech")),
            new Kind("Small chest of drawers", 15800, 5, 17500, List.of("pine", "oak")),
            new Kind("Picture frame", 2200, 1, 1100, List.of("plaster", "pine")),
            new Kind("Lamp base", 5200, 2, 1400, List.of("plaster", "beech")),
            new Kind("Crate", 3000, 1, 4200, List.of("pine")),
            new Kind("Wall shelf", 4600, 2, 3900, List.of("pine", "oak")));

    private record Good(String name, String unit, int content, int price, boolean retail, boolean handy) {}

    private final State shop;

    Catalogue(State shop) {
        this.shop = shop;
    }

    void fill() {
        shop.rows.add(
                "shop",
                "Fern and Fable Workroom (invented demo shop)",
                "USD",
                2,
                "FIFO",
                usd(1800),
                "us-schedule-c",
                State.FIRST,
                "America/New_York",
                "en",
                "US");
        sources();
        places();
        channels();
        STYLES.forEach(style -> shop.rows.add("style", shop.id(style), style));
        KINDS.forEach(kind -> shop.rows.add("object_kind", shop.id(kind.name()), kind.name(), kind.area()));
        supplies();
        new Looks(shop).write();
    }

    private void sources() {
        source("Hollow Barn thrift room", "Rounds up for the animal shelter on request", "");
        source("Marsh Lane house clearances", "Sells by the lot, premium of 10 percent", "");
        source("Tuesday yard auction", "Premium is taxed", "RC-1204-INVENTED");
        source("Brinewater flea field", "Cash only, no receipts", "");
        source("Plank and Pigment supply room", "Gives store credit for unopened jars", "RC-1204-INVENTED");
        source("Doorstep gifts", "Neighbours bring things by", "");
        shop.rows.add("quick_percent", "00000000-0000-4000-8000-0000000000b1", "blue tags, half price", 1, 50);
        shop.rows.add("quick_percent", "00000000-0000-4000-8000-0000000000b2", "last hour on Sunday", 2, 25);
    }

    private void source(String name, String note, String certificate) {
        shop.rows.add("source", shop.id(name), name, note, certificate, "");
    }

    private void places() {
        place(CASH, "CASH");
        place(BANK, "BANK");
        place(CARD, "CARD");
        place(WEB, "CHANNEL");
        place(QUAY, "CHANNEL");
    }

    private void place(String name, String kind) {
        shop.rows.add("money_place", shop.id(name), name, kind);
    }

    private void channels() {
        channel(SITE, WEB, false);
        fee(SITE, State.FIRST, "2.9", 30, 0);
        fee(SITE, Selling.FEES_RISE, "3.2", 30, 0);
        shop.rows.add("channel_unlisted", shop.id(STALL));
        usual(SITE, 650, 740);
        channel(STALL, CASH, false);
        fee(STALL, State.FIRST, "0", 0, RENT);
        fee(STALL, Selling.FEES_RISE, "0", 0, RENT);
        channel(MARKET, QUAY, true);
        fee(MARKET, State.FIRST, "9", 20, 0);
        fee(MARKET, Selling.FEES_RISE, "9.5", 25, 0);
        usual(MARKET, 600, 740);
        taxPlace();
        markDown(30, 10);
        markDown(75, 20);
        markDown(150, 35);
    }

    private void channel(String name, String place, boolean passes) {
        shop.rows.add("channel", shop.id(name), name, shop.id(place), passes);
    }

    private void fee(String name, LocalDate from, String percent, int fixed, int month) {
        Object none = "";
        shop.rows.add(
                "channel_fee",
                shop.id(name),
                from,
                percent,
                usd(fixed),
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                month == 0 ? none : usd(month));
    }

    private void usual(String name, int shipping, int outlay) {
        shop.rows.add("channel_usual", shop.id(name), usd(shipping), usd(outlay), 0, false);
    }

    private void taxPlace() {
        shop.rows.add("discount_code", CODE, THANKS, "10", "", LocalDate.of(2025, 1, 1), "", "On the card in the bag");
        shop.rows.add("tax_place", COUNTY, "Fallow County (invented)");
        shop.rows.add("tax_place_rate", COUNTY, State.FIRST, "6", true);
        shop.rows.add("tax_place_rate", COUNTY, LocalDate.of(2026, 7, 1), "6.25", true);
        shop.rows.add("channel_tax_place", shop.id(STALL), COUNTY);
    }

    private void markDown(int days, int percent) {
        shop.rows.add("mark_down_step", days, percent);
    }

    private void supplies() {
        line(
                "Quillmere mineral paints",
                "Quillmere Paintworks (invented)",
                "VOLUME",
                List.of(
                        new Good("Pond green", "ml", 500, 1900, true, true),
                        new Good("Chimney grey", "ml", 500, 1900, true, true),
                        new Good("Linen white", "ml", 500, 1900, true, true),
                        new Good("Midnight", "ml", 500, 1900, false, true),
                        new Good("Rosehip", "ml", 250, 1250, false, true),
                        new Good("Old rust", "ml", 250, 1250, false, true),
                        new Good("Barley", "ml", 250, 1250, false, true)));
        line(
                "Odalby waxes",
                "Odalby Wax House (invented)",
                "MASS",
                List.of(
                        new Good("Clear wax", "g", 400, 1650, true, true),
                        new Good("Dark wax", "g", 400, 1650, true, true),
                        new Good("White wax", "g", 200, 1100, false, true),
                        new Good("Gilding wax", "g", 50, 1400, false, true)));
        line(
                "Fernhollow paper and transfers",
                "Fernhollow Press (invented)",
                "AREA",
                List.of(
                        new Good("Botanical sheet", "cm2", 5400, 2400, false, false),
                        new Good("Folk border sheet", "cm2", 3600, 2100, false, false),
                        new Good("Tissue, birds", "cm2", 4200, 450, false, false),
                        new Good("Script paper", "cm2", 4200, 450, false, false)));
        line(
                "Brasket knobs and pulls",
                "Brasket Foundry (invented)",
                "COUNT",
                List.of(
                        new Good("Round knob", "", 10, 1900, false, false),
                        new Good("Shell pull", "", 6, 2100, false, false),
                        new Good("Screw hook", "", 20, 800, false, false)));
        line(
                "Tidewick sealers",
                "Tidewick Coatings (invented)",
                "VOLUME",
                List.of(
                        new Good("Matt sealer", "ml", 1000, 2600, false, true),
                        new Good("Outdoor sealer", "ml", 500, 2200, false, true),
                        new Good("Stain blocker", "ml", 500, 1800, false, true)));
        line(
                "Sundry bench goods",
                "various",
                "LENGTH",
                List.of(
                        new Good("Masking tape", "cm", 5000, 520, false, false),
                        new Good("Jute rope", "cm", 3000, 900, false, false),
                        new Good("Linen ribbon", "cm", 1000, 640, false, false),
                        new Good("Copper foil tape", "cm", 1500, 980, false, false)));
    }

    private void line(String name, String maker, String dimension, List<Good> goods) {
        UUID line = shop.id(name);
        shop.rows.add("supply_line", line, name, maker);
        for (Good good : goods) {
            UUID id = shop.id(good.name());
            String retail = good.retail() ? usd(good.price() * 3L / 2) : "";
            String low = String.valueOf(good.content() / 4);
            boolean liquid = dimension.equals("VOLUME") && good.handy();
            shop.rows.add(
                    "supply",
                    id,
                    line,
                    good.name(),
                    dimension,
                    retail,
                    low,
                    liquid ? 85 : "",
                    liquid ? "1.25" : "",
                    "");
            shop.rows.add("supply_pack", id, container(good.unit()), good.content());
            if (good.handy()) {
                shop.rows.add("supply_measure", id, good.unit().equals("g") ? "dab" : "brush load", 4);
                if (good.unit().equals("g") && !shop.rows.all().containsKey("supply_measure_change")) {
                    shop.rows.add("supply_measure_change", id, "dab", "2025-01-02", 3, 4);
                }
            }
            shop.supplies.add(new State.Supply(
                    id, good.name(), good.unit(), good.content(), good.price(), good.retail(), good.handy()));
        }
    }

    /** What things measured so are bought in. */
    private static String container(String unit) {
        return switch (unit) {
            case "ml" -> "jar";
            case "g" -> "bag";
            case "cm" -> "roll";
            case "cm2" -> "large sheet";
            default -> "box";
        };
    }
}
