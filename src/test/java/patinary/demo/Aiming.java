package patinary.demo;

import static patinary.demo.Draws.usd;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;

/** What she aims at with each piece, and the receipt of an entry that waited on her phone; all invented. */
final class Aiming {

    private final State shop;

    Aiming(State shop) {
        this.shop = shop;
    }

    /** To be called when everything else is written; it draws nothing. */
    void write() {
        shop.rows.add("aim", 1, 150, usd(400), usd(1000), "", "6.5", ".00 .50");
        fromThePhone(shop.rows.of("receipt"));
    }

    /** Typed at the market without reception, and sent at home. */
    private void fromThePhone(List<List<String>> receipts) {
        List<String> receipt = receipts.get(receipts.size() - 1);
        shop.rows.add(
                "delivery",
                "Demo",
                UUID.nameUUIDFromBytes("an entry that waited".getBytes(StandardCharsets.UTF_8)),
                "5eedfab1e0".repeat(6) + "5eed",
                "/receipts/" + receipt.get(0),
                "The receipt is recorded.",
                receipt.get(1) + "T15:20:00Z",
                receipt.get(1) + "T19:05:00Z");
    }
}
