package patinary.demo;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Her vehicle, the ways she drives often, and her workroom. Draws no chance. */
final class Driving {

    static final UUID VAN = id("the van");

    private final State shop;

    Driving(State shop) {
        this.shop = shop;
    }

    void write() {
        shop.rows.add("vehicle", VAN, "Green van", "2024-11-03", "Invented, like everything here");
        shop.rows.add("vehicle_year", VAN, 2025, "48120.4", "53866.9", "0");
        shop.rows.add("vehicle_year", VAN, 2026, "53866.9", "", "");
        shop.rows.add("saved_way", id("barn"), "Workroom", "Hollow Barn", "Thrift round", "5.5");
        shop.rows.add("saved_way", id("lane"), "Workroom", "Marsh Lane", "House clearance", "15.2");
        shop.rows.add("saved_way", id("yard"), "Workroom", "Tuesday yard", "Auction", "6.4");
        room();
        taxes();
    }

    /** The room that is the workroom and nothing else. */
    private void room() {
        shop.rows.add("home_use", 2025, "140", 12, "The back room (invented)");
        shop.rows.add("home_use", 2026, "140", 12, "");
    }

    /** What she reckons for her taxes, and paid of them. */
    private void taxes() {
        shop.rows.add("set_aside_year", 2025, "10", "4");
        shop.rows.add("set_aside_year", 2026, "12", "4");
        shop.rows.add("tax_payment", id("first of 2026"), 2026, "2026-04-14", "120.00", "By transfer (invented)");
    }

    private static UUID id(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
