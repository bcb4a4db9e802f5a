package patinary.demo;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** Her vehicle, what its odometer read, and the ways she drives often. Draws no chance. */
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
    }

    private static UUID id(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }
}
