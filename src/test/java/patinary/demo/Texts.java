package patinary.demo;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;

/** Two patterns for texts, one text that was edited, and what she says of care; all invented. */
final class Texts {

    private static final String BODY = """
            {title}. A one-off: an old thing, worked over by hand.

            What it is: {kind}, {style}
            Made of: {material}
            Size: {size}
            Finished with: {finish}
            Care:
            - {care}

            Found second-hand; small marks of its age stay.""";

    private final State shop;

    Texts(State shop) {
        this.shop = shop;
    }

    /** To be called when the offers are written; it draws nothing, so that whatever is drawn after it stays as it was. */
    void write() {
        UUID site = id("site");
        shop.rows.add("listing_pattern", site, "For the web shop", shop.id(Catalogue.SITE), "{title}", BODY);
        shop.rows.add(
                "listing_pattern",
                id("marketplace"),
                "Short, for the marketplace",
                shop.id(Catalogue.MARKET),
                "{title} - {style}",
                "{title}\n{size}\n{care}\n{codes}");
        List<List<String>> offers = shop.rows.of("offer");
        List<String> last = offers.get(offers.size() - 1);
        shop.rows.add(
                "listing_text",
                last.get(0),
                site,
                last.get(4) + ", one of a kind",
                "For a hall that is too white.\n\nCare: dust it, and keep it dry.");
        shop.rows.add("care_word", "CARE-8", "Please use a coaster.", false);
        shop.rows.add("care_word", "CARE-12", "", true);
        shop.rows.add(
                "supply_care",
                id("care"),
                shop.supplies.get(0).id,
                "",
                "Touch it up with the same paint: ask for a spoonful.");
    }

    private static UUID id(String name) {
        return UUID.nameUUIDFromBytes(("text " + name).getBytes(StandardCharsets.UTF_8));
    }
}
