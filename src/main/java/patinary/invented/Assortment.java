package patinary.invented;

import java.util.List;

/** What the invented shop works on and with. All names are made up. */
final class Assortment {

    static final List<String> KINDS = List.of(
            "Tray",
            "Box",
            "Side table",
            "Stool",
            "Mirror",
            "Candle holder",
            "Drawer",
            "Picture frame",
            "Lamp base",
            "Crate",
            "Wall shelf",
            "Bench",
            "Bowl",
            "Clock case",
            "Basket",
            "Jug",
            "Plant stand",
            "Bread bin",
            "Coat rack",
            "Chair",
            "Chest",
            "Tin",
            "Ladder",
            "Cabinet");

    static final List<String> STYLES = List.of(
            "Marsh green",
            "Chalk and rope",
            "Midnight folk",
            "Washed linen",
            "Rust and rose",
            "Plain waxed",
            "Gilt edge",
            "Harbour stripe",
            "Fern print",
            "Smoked oak",
            "Tide line",
            "Barn red",
            "Pressed flowers",
            "Slate and cream",
            "Copper leaf",
            "Milk glass");

    static final List<String> MATERIALS = List.of("pine", "oak", "beech", "tin", "plaster", "brass");

    static final List<String> SOURCES = List.of(
            "Hollow Barn", "Marsh Lane clearances", "Tuesday yard", "Brinewater field", "Church hall", "Roadside");

    static final int LINES = 15;
    static final int SUPPLIES = 60;

    /** What one container holds, in the supply's unit. */
    static final int CONTAINER = 250;

    private Assortment() {}

    /** Which family of supplies one belongs to. */
    static int line(int supply) {
        return supply / (SUPPLIES / LINES);
    }

    /** The price of a container in cents. */
    static long price(int supply) {
        return 600 + 37L * supply;
    }

    /** What a plain piece of the kind is worth, in cents. */
    static long worth(int kind) {
        return 1800 + 450L * (kind * 7 % KINDS.size());
    }

    /** How much more a style brings than another. */
    static double liking(int style) {
        return 0.8 + 0.05 * (style * 5 % STYLES.size());
    }

    /** The mean days that a piece waits on one channel when it sells at all. */
    static double patience(int kind, int style) {
        return 45 + 6.0 * (kind * 5 % KINDS.size()) + 5.0 * (style * 3 % STYLES.size());
    }
}
