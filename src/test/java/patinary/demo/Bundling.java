package patinary.demo;

import static patinary.demo.Draws.usd;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** A set of supplies that she sells together: sold twice, one jar of it sent back, one arrived broken. */
final class Bundling {

    private static final String NAME = "Starter set";
    private static final long PRICE = 7200;
    private static final LocalDate FIRST_SOLD = LocalDate.of(2025, 11, 18);
    private static final LocalDate BROKEN = LocalDate.of(2025, 11, 27);
    private static final LocalDate SECOND_SOLD = LocalDate.of(2025, 12, 20);
    private static final LocalDate SENT_BACK = LocalDate.of(2026, 1, 10);

    /**
     * What is in it, and its share of the price. Asked singly: 28.50, 24.75 and 28.50, together 81.75; of 72.00 that is
     * 25.1009, 21.7982 and 25.1009, by largest remainder 25.10, 21.80 and 25.10.
     */
    private record Part(String supply, String typed, int content, long share) {}

    private static final List<Part> PARTS = List.of(
            new Part("Chimney grey", "1 jar", 500, 2510),
            new Part("Clear wax", "1 bag", 400, 2180),
            new Part("Linen white", "1 jar", 500, 2510));

    private final State shop;
    private final UUID bundle;

    Bundling(State shop) {
        this.shop = shop;
        bundle = shop.draws.id();
    }

    void write() {
        LocalDate last = shop.day;
        shop.rows.add("bundle", bundle, NAME, usd(PRICE), false);
        for (int i = 0; i < PARTS.size(); i++) {
            Part part = PARTS.get(i);
            shop.rows.add("bundle_part", bundle, i + 1, shop.id(part.supply()), part.typed(), part.content());
        }
        UUID first = sell(FIRST_SOLD, "J. Fictive", "ORDER-0901");
        refund(BROKEN, "The jar arrived broken", first, PARTS.get(0), false);
        UUID second = sell(SECOND_SOLD, "The yellow house", "ORDER-0902");
        refund(SENT_BACK, "Had that white already", second, PARTS.get(2), true);
        shop.day = last;
    }

    /** From the web shop: 6.50 for shipping, and 3.2 % of 78.50 and 0.30 kept, 2.81. */
    private UUID sell(LocalDate day, String buyer, String order) {
        shop.day = day;
        UUID id = shop.draws.id();
        UUID web = shop.id(Catalogue.WEB);
        shop.rows.add(
                "sale",
                shop.document(
                        id,
                        "",
                        shop.id(Catalogue.SITE),
                        buyer,
                        order,
                        usd(0),
                        usd(650),
                        usd(0),
                        false,
                        usd(281),
                        web,
                        day.plusDays(1),
                        "",
                        "",
                        ""));
        for (int i = 0; i < PARTS.size(); i++) {
            Part part = PARTS.get(i);
            shop.rows.add(
                    "sale_line",
                    id,
                    i + 1,
                    part.supply(),
                    1,
                    usd(part.share()),
                    usd(0),
                    shop.id(part.supply()),
                    part.content(),
                    bundle,
                    1,
                    NAME);
        }
        shop.rows.add("sale_payment", id, 1, "PLACE", web, usd(PRICE + 650));
        return id;
    }

    private void refund(LocalDate day, String why, UUID sale, Part part, boolean toTheShelf) {
        shop.day = day;
        UUID id = shop.draws.id();
        shop.rows.add(
                "refund", shop.document(id, why, sale, "PLACE", shop.id(Catalogue.WEB), usd(0), usd(0), usd(0), ""));
        shop.rows.add(
                "refund_line",
                id,
                1,
                "",
                shop.id(part.supply()),
                part.content(),
                usd(part.share()),
                toTheShelf,
                !toTheShelf,
                "");
    }
}
